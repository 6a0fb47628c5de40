package goniograph.pose;

/** A pose file, solved: what is drawn, and what is true of it. */
public record Solved(Scene scene, SceneFacts facts) {}
