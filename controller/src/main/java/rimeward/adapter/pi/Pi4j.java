package rimeward.adapter.pi;

import com.pi4j.context.Context;
import com.pi4j.context.ContextBuilder;
import com.pi4j.plugin.gpiod.provider.gpio.digital.GpioDDigitalOutputProvider;
import com.pi4j.plugin.linuxfs.provider.i2c.LinuxFsI2CProvider;

/**
 * Contexts of Pi4J that hold what is named here and nothing else: one that looks for plug-ins by itself would take a mock for a relay,
 * and say nothing.
 */
final class Pi4j {
    private Pi4j() {}

    static Context forOutputs() {
        return ContextBuilder.newInstance()
                .noAutoDetect()
                .add(GpioDDigitalOutputProvider.newInstance())
                .build();
    }

    static Context forI2c() {
        return ContextBuilder.newInstance()
                .noAutoDetect()
                .add(LinuxFsI2CProvider.newInstance())
                .build();
    }
}
