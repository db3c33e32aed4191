package rimeward.core.decision;

/** Whether the dryer is to warm where it may: its heat is enough, and the air moist enough for it to keep working. Pure. */
@FunctionalInterface
public interface WarmChoice {
    boolean dryer(DryerHeat heat);
}
