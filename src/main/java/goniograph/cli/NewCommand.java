package goniograph.cli;

import picocli.CommandLine.Command;

/** The group of commands that make blanks. */
@Command(
    name = "new",
    description = "Makes a blank in which every field is present, empty and explained.",
    synopsisSubcommandLabel = "exercise|advice")
final class NewCommand {}
