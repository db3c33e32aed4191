package rimeward.winter;

import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;
import java.util.Locale;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.Stretch;
import rimeward.core.tunnel.TunnelFit;
import rimeward.sim.scenario.Scenario;

/**
 * What it costs to learn from a month of minutes: seconds of one core, and heap besides what the month itself takes, garbage among it. Asserts
 * nothing. Runs in a JVM of its own with little heap, so that garbage is not let lie about. No arguments.
 */
final class FitCostBench {
    private static final int MONTH_DAYS = 31;
    private static final long SEED = 101;
    private static final String IN_CHILD = "month";
    private static final double BYTES_A_MB = 1024 * 1024;

    private FitCostBench() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        if (List.of(args).contains(IN_CHILD)) {
            look();
            return;
        }
        String java = System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
        new ProcessBuilder(
                        java,
                        "-Xmx160m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FitCostBench.class.getName(),
                        IN_CHILD)
                .inheritIO()
                .start()
                .waitFor();
    }

    private static void look() {
        Scenario scenario = new RandomWinter(SEED, MONTH_DAYS).frosty();
        List<Stretch> month = FitBench.stretches(scenario, (outcome, truth) -> {});
        List<MemoryPoolMXBean> heaps = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .toList();
        ManagementFactory.getMemoryMXBean().gc();
        long before =
                heaps.stream().mapToLong(pool -> pool.getUsage().getUsed()).sum();
        heaps.forEach(MemoryPoolMXBean::resetPeakUsage);
        long beganNs = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        Lesson lesson = TunnelFit.of(scenario.site(), month);
        double tookS = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - beganNs) / 1e9;
        long most =
                heaps.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
        System.out.printf(
                Locale.ROOT,
                "%d quarters of an hour: %s; %.1f s of one core; at most %.0f MB of heap besides the %.0f MB before%n",
                month.stream().mapToInt(stretch -> stretch.quarters().size()).sum(),
                lesson instanceof Lesson.Learned ? "learned" : lesson,
                tookS,
                (most - before) / BYTES_A_MB,
                before / BYTES_A_MB);
    }
}
