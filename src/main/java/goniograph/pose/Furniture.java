package goniograph.pose;

/** Builds one kind of support where it stands. */
interface Furniture {
  Placed place(Site site);
}
