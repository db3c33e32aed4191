package rimeward.adapter.pi;

import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Queue;
import java.util.Set;
import rimeward.site.InputLine;

/** Lines to pull by hand; each can be held by another program, or break. */
final class FakeLines implements InputTaker {
    final Set<Integer> heldElsewhere = new HashSet<>();
    final Set<Integer> broken = new HashSet<>();
    final Map<Integer, Boolean> high = new LinkedHashMap<>();
    final Queue<Long> edgesNs = new ArrayDeque<>();
    final Set<Integer> taken = new HashSet<>();
    int asked;

    @Override
    public TakenLine take(String what, InputLine at, boolean edges) {
        asked++;
        if (heldElsewhere.contains(at.line())) {
            throw new LinesRefused("line " + at.line() + " (" + what + ") is held by \"dht11@4\"");
        }
        taken.add(at.line());
        return new Line(at.line());
    }

    private final class Line implements TakenLine {
        private final int line;

        Line(int line) {
            this.line = line;
        }

        private void check() {
            if (broken.contains(line)) {
                throw new RelayLine.LineFailed("EIO", new IllegalStateException());
            }
        }

        @Override
        public boolean isHigh() {
            check();
            return high.getOrDefault(line, false);
        }

        @Override
        public OptionalLong nextEdgeNs(long waitMs) {
            check();
            Long edge = edgesNs.poll();
            return edge == null ? OptionalLong.empty() : OptionalLong.of(edge);
        }

        @Override
        public void close() {
            taken.remove(line);
        }
    }
}
