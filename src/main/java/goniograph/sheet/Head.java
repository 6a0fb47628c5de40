package goniograph.sheet;

import java.util.Optional;

/**
 * The head of a page.
 *
 * @param title with the side in words where there is one
 * @param therapistTitle the same title in the therapist's language, where that differs
 * @param therapistLanguage its tag, "" where there is none
 * @param nameLabel what stands before the line for the patient's name
 * @param sheetOf the words for "sheet 2 of 3"; blanks to be filled by hand on a drawer copy
 */
public record Head(
    String title,
    Optional<String> therapistTitle,
    String therapistLanguage,
    String nameLabel,
    String sheetOf) {}
