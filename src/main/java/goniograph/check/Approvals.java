package goniograph.check;

import goniograph.finding.Finding;
import goniograph.library.Advice;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.register.EntryDigests;
import goniograph.register.EntryRegister;
import goniograph.register.Read;
import goniograph.register.RegisterReader;
import goniograph.register.Releases;
import goniograph.register.SharedDigests;
import goniograph.register.SharedRegister;
import goniograph.register.Standing;
import goniograph.register.Validity;
import goniograph.register.VersionDigests;
import goniograph.source.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is signed, held against what stands in the library: how every sheet stands, what is wrong
 * with the register, and what was released.
 *
 * @param standings of every exercise and topic in every language of the clinic, in their order
 * @param releases the frozen releases
 * @param damage what is wrong with the files of the register
 */
public record Approvals(List<Standing> standings, Releases releases, List<Finding> damage) {
  public Approvals {
    standings = List.copyOf(standings);
    damage = List.copyOf(damage);
  }

  /** Judges a library that was read from these files. */
  public static Approvals of(Files files, Library library, LocalDate today) {
    List<Finding> damage = new ArrayList<>();
    SharedRegister shared = whole(RegisterReader.shared(files), damage);
    Releases releases = whole(Releases.read(files, shared), damage);
    SharedDigests digests = SharedDigests.read(files, Library.SOURCE_LANGUAGE, library.languages());
    Validity validity = new Validity(digests, shared, today);
    List<Standing> standings = new ArrayList<>();
    for (Entry entry : library.entries()) {
      if (entry instanceof Exercise || entry instanceof Advice) {
        EntryRegister signed = whole(RegisterReader.entry(entry), damage);
        EntryDigests now = EntryDigests.of(entry, library);
        for (String language : library.languages()) {
          standings.add(standing(validity, entry, now, signed, language));
        }
      }
    }
    return new Approvals(standings, releases, damage);
  }

  private static <T> T whole(Read<T> read, List<Finding> damage) {
    damage.addAll(read.findings());
    return read.value();
  }

  private static Standing standing(
      Validity validity, Entry entry, EntryDigests now, EntryRegister signed, String language) {
    return language.equals(Library.SOURCE_LANGUAGE)
        ? validity.standing(now, signed)
        : validity.standing(now, signed, version(entry, signed, language));
  }

  private static VersionDigests version(Entry entry, EntryRegister signed, String language) {
    return entry
        .version(language)
        .map(version -> VersionPieces.of(entry, version, signed).digests())
        .orElseGet(() -> new VersionDigests(language, "", List.of(), List.of(), List.of()));
  }

  /** How an entry stands in a language of the clinic. */
  public Optional<Standing> standing(String entry, String language) {
    return standings.stream()
        .filter(one -> one.entry().equals(entry) && one.language().equals(language))
        .findFirst();
  }

  /**
   * Everything that keeps sheets from being final, in report order. Of one rule there is one
   * finding for a file and language, which lists all its gaps; one about a shared file names no
   * entry.
   */
  public List<Finding> findings() {
    List<Finding> all = new ArrayList<>(damage);
    all.addAll(Gathered.of(standings));
    return all.stream().sorted(Finding.ORDER).toList();
  }
}
