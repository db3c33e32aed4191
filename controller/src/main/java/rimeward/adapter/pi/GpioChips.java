package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.List;

/** Labels of the GPIO chips, where the kernel tells them in files (CONFIG_GPIO_SYSFS); none where it does not. */
record GpioChips(List<String> labels) {
    private static final String ONLY = "pinctrl";

    static GpioChips below(Path root) {
        return new GpioChips(Folders.in(root.resolve("sys/class/gpio")).stream()
                .map(chip -> Folders.line(chip.resolve("label")))
                .filter(label -> !label.isEmpty())
                .distinct()
                .toList());
    }

    /**
     * Pi4J takes the first chip whose label contains "pinctrl" and no other, whatever one asks for: another label is refused here, or a
     * line would be taken that nobody meant.
     *
     * @param what whose line it is, for people
     */
    void check(String what, String label) {
        if (!label.contains(ONLY)) {
            throw new LinesRefused(
                    what + ": chip \"" + label + "\" cannot be reached, only the one whose label contains \"" + ONLY
                            + "\"; `rimeward wiring` lists the labels");
        }
        if (!labels.isEmpty() && !labels.contains(label)) {
            throw new LinesRefused(what + ": no chip is labelled \"" + label + "\"; there are " + labels);
        }
    }
}
