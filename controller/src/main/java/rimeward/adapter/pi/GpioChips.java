package rimeward.adapter.pi;

import java.nio.file.Path;
import java.util.List;

/** Labels of the GPIO chips, where the kernel tells them in files (CONFIG_GPIO_SYSFS); none where it does not. */
record GpioChips(List<String> labels) {
    static GpioChips below(Path root) {
        return new GpioChips(Folders.in(root.resolve("sys/class/gpio")).stream()
                .map(chip -> Folders.line(chip.resolve("label")))
                .filter(label -> !label.isEmpty())
                .distinct()
                .toList());
    }
}
