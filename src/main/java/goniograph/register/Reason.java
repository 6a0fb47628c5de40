package goniograph.register;

import goniograph.finding.Finding;

/**
 * One thing that keeps a sheet from being printed as final, or will soon.
 *
 * @param state what it makes of the sheet
 * @param print how the sheet may still be printed
 * @param finding the same in words
 */
public record Reason(State state, Print print, Finding finding) {}
