package rimeward.broker;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What Linux counts of a process (proc_pid_status(5), proc_pid_stat(5), proc_pid_io(5)).
 *
 * @param residentMiB memory it holds now
 * @param mostMiB and ever held
 * @param cpuS time on a processor since its start, s; clock ticks are hundredths, as on every common Linux
 * @param writtenBytes to the disk, since its start
 */
record ProcessLook(double residentMiB, double mostMiB, long threads, double cpuS, long writtenBytes) {
    static ProcessLook at(long pid) throws IOException {
        Path dir = Path.of("/proc", Long.toString(pid));
        String status = Files.readString(dir.resolve("status"), UTF_8);
        String stat = Files.readString(dir.resolve("stat"), UTF_8);
        String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" "); // from the third on
        return new ProcessLook(
                number(status, "VmRSS") / 1024.0,
                number(status, "VmHWM") / 1024.0,
                number(status, "Threads"),
                (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / 100.0,
                number(Files.readString(dir.resolve("io"), UTF_8), "write_bytes"));
    }

    private static long number(String text, String name) {
        Matcher found = Pattern.compile("(?m)^" + name + ":\\s+(\\d+)").matcher(text);
        if (!found.find()) {
            throw new IllegalStateException("no " + name + " in " + text);
        }
        return Long.parseLong(found.group(1));
    }
}
