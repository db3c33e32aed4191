package rimeward.core.tunnel;

/** Whether the tunnel still loses what it used to. */
public sealed interface LossStanding {
    /** Nobody can say: too few nights are known yet, or nobody has looked. */
    record Unknown() implements LossStanding {}

    /** As it used to be, or near enough. */
    record Usual() implements LossStanding {}

    /** It changed, and this is neither undone nor taken as usual yet. */
    record Changed(LossChange change) implements LossStanding {}

    /** Before anybody has looked. */
    LossStanding UNKNOWN = new Unknown();
}
