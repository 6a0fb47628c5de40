package goniograph.cli;

import org.junit.jupiter.api.Test;

class GoniographTest {
  @Test
  void starts() {
    Goniograph.main(new String[0]);
  }
}
