package goniograph.cli;

import picocli.CommandLine.Command;

/** The group of commands about signatures, releases and codes. */
@Command(
    name = "register",
    description = "Signatures, releases, and what a code on paper stands for.",
    synopsisSubcommandLabel = "sign|release|show")
final class RegisterCommand {}
