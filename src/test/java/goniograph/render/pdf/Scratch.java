package goniograph.render.pdf;

import java.nio.file.*;

class Scratch {
  public static void main(String[] a) throws Exception {
    for (int round = 0; round < Integer.getInteger("rounds", 1); round++)
      for (String l : Pages.LANGUAGES) {
        long t = System.nanoTime();
        RenderedPdf r = Pages.render(l);
        if (round < 1 || round % 50 == 0)
          System.out.println(
              l
                  + " "
                  + (System.nanoTime() - t) / 1000000
                  + " ms "
                  + r.pdf().length
                  + " "
                  + r.missing()
                  + r.warnings());
        Files.write(Path.of("/tmp/pdf/" + l + ".pdf"), r.pdf());
      }
  }
}
