package goniograph.cli;

import picocli.CommandLine.Command;

/** The group of commands about signatures, releases and codes. */
@Command(
    name = "register",
    description = "Signatures, accepted warnings, releases, and what a code on paper stands for.",
    synopsisSubcommandLabel = "sign|accept|release|show")
final class RegisterCommand {}
