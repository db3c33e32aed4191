package rimeward.sizing;

/** How what is asked for is called where it is asked: a refusal must name what the person has before them. */
public enum Naming {
    OPTIONS,
    FIELDS;

    /** {@code width_m} is {@code --width-m} on a command line and {@code width (m)} on a form. */
    public String of(String key) {
        if (this == OPTIONS) {
            return "--" + key.replace('_', '-');
        }
        int unitAt = key.lastIndexOf('_');
        return unitAt < 0 ? key : key.substring(0, unitAt).replace('_', ' ') + " (" + key.substring(unitAt + 1) + ")";
    }
}
