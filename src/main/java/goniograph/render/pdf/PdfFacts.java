package goniograph.render.pdf;

import java.time.LocalDate;

/**
 * What a PDF says of itself beside its page.
 *
 * @param title the document's title in its own language
 * @param language BCP 47 tag of the page's language
 * @param rightToLeft whether the page is read to the left
 * @param digest digest of the content in hexadecimal digits, at least 16; the file's identifier
 *     comes from it
 * @param date the day that counts as today; dates in the file are midnight UTC of it
 */
public record PdfFacts(
    String title, String language, boolean rightToLeft, String digest, LocalDate date) {}
