package rimeward.core.watch;

/** What the machines are seen to do, and what the watch will be handed at the next tick. */
public record Watched(Deliveries deliveries, WatchState next) {}
