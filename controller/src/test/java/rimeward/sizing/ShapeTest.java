package rimeward.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShapeTest {
    private static final double PI = StrictMath.PI;

    @Test
    void halfCylinder() {
        Areas areas = new Shape.Hoop(4, 2, 6).areas();
        assertThat(areas.roofAndSidesM2()).isCloseTo(PI * 2 * 6, within(1e-9));
        assertThat(areas.endsM2()).isCloseTo(PI * 2 * 2, within(1e-9)); // both
        assertThat(areas.volumeM3()).isCloseTo(PI * 2 * 2 / 2 * 6, within(1e-9));
        assertThat(areas.floorM2()).isEqualTo(24);
        assertThat(areas.edgeM()).isEqualTo(20);
    }

    @Test
    void higherHoopsStandOnUprightSides() {
        Areas areas = new Shape.Hoop(4, 2.5, 6).areas();
        assertThat(areas.roofAndSidesM2()).isCloseTo((PI * 2 + 1) * 6, within(1e-9));
        assertThat(areas.endsM2()).isCloseTo(PI * 4 + 2 * 0.5 * 4, within(1e-9));
    }

    @Test
    void lowHoopsAreAnArcOfACircle() {
        // A circle of radius 5 cut 1 m below its top: chord 6 m, half angle asin(3/5).
        Shape.Hoop hoop = new Shape.Hoop(6, 1, 10);
        double angle = StrictMath.asin(0.6);
        assertThat(hoop.outlineM()).isCloseTo(2 * 5 * angle, within(1e-9));
        assertThat(hoop.sectionM2()).isCloseTo(25 * angle - 3 * 4, within(1e-9)); // sector less triangle
    }

    @Test
    void ridge() {
        // Slopes of 5 m over 4 m of half width and 3 m of rise.
        Areas areas = new Shape.Ridge(8, 2, 5, 10).areas();
        assertThat(areas.roofAndSidesM2()).isCloseTo((2 * 2 + 2 * 5) * 10, within(1e-9));
        assertThat(areas.endsM2()).isCloseTo(2 * (8 * 2 + 8 * 3 / 2.0), within(1e-9));
        assertThat(areas.volumeM3()).isCloseTo(280, within(1e-9));
    }
}
