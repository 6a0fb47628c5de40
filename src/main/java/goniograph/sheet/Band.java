package goniograph.sheet;

/**
 * Words across the page of a sheet that must not be taken for final.
 *
 * @param words for instance "DRAFT – NOT FOR PATIENTS"
 */
public record Band(String words) {}
