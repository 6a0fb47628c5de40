package goniograph.pose;

/**
 * How far a part is from where its contact says it is.
 *
 * @param contact the contact, as typed, for one side
 * @param cm the distance; solved contacts miss by less than .1
 */
public record ContactMiss(Contact contact, double cm) {}
