package goniograph.sheet;

/**
 * The clinic's phone, once, right below the stop box.
 *
 * @param label for instance "Phone"
 * @param phone the number
 * @param hours when someone answers
 * @param closed what to do when nobody does
 */
public record Contact(String label, String phone, String hours, String closed) {}
