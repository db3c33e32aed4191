package rimeward.core;

/** What one tick did, and what the next will be handed. */
public record Stepped(Outcome outcome, ControlState next) {}
