package rimeward.sizing;

/** A tunnel of one cross-section along its length. Dimensions in m, measured outside. */
public sealed interface Shape {
    double widthM();

    double lengthM();

    /** Area of an end, m². */
    double sectionM2();

    /** Length of the cover over one cross-section, from ground to ground, m. */
    double outlineM();

    /** The same cross-section, another length. */
    Shape withLength(double otherM);

    String inWords();

    private static String m(double lengthM) {
        return Inputs.plain(lengthM) + " m";
    }

    default Areas areas() {
        return new Areas(
                outlineM() * lengthM(),
                2 * sectionM2(),
                widthM() * lengthM(),
                2 * (widthM() + lengthM()),
                sectionM2() * lengthM());
    }

    /** Hoops: an arc of a circle from ground to ground; where they are higher than half their width, a half circle on upright sides. */
    record Hoop(double widthM, double heightM, double lengthM) implements Shape {
        @Override
        public double sectionM2() {
            double uprightM = uprightM();
            double angle = halfAngle();
            double radiusM = radiusM();
            double arcM2 = radiusM * radiusM * (angle - StrictMath.sin(angle) * StrictMath.cos(angle));
            return arcM2 + uprightM * widthM;
        }

        @Override
        public double outlineM() {
            return 2 * radiusM() * halfAngle() + 2 * uprightM();
        }

        private double uprightM() {
            return Math.max(0, heightM - widthM / 2);
        }

        private double riseM() {
            return heightM - uprightM();
        }

        private double radiusM() {
            return (widthM * widthM / 4 + riseM() * riseM()) / (2 * riseM());
        }

        /** Half the arc's angle at its centre, rad. */
        private double halfAngle() {
            return 2 * StrictMath.atan2(2 * riseM(), widthM);
        }

        @Override
        public Shape withLength(double otherM) {
            return new Hoop(widthM, heightM, otherM);
        }

        @Override
        public String inWords() {
            return "hoops " + m(widthM) + " wide and " + m(heightM) + " high, " + m(lengthM) + " long";
        }
    }

    /** Upright walls to the eaves and a roof of two equal slopes. */
    record Ridge(double widthM, double eavesM, double ridgeM, double lengthM) implements Shape {
        @Override
        public double sectionM2() {
            return widthM * (eavesM + ridgeM) / 2;
        }

        @Override
        public double outlineM() {
            return 2 * eavesM + 2 * StrictMath.hypot(widthM / 2, ridgeM - eavesM);
        }

        @Override
        public Shape withLength(double otherM) {
            return new Ridge(widthM, eavesM, ridgeM, otherM);
        }

        @Override
        public String inWords() {
            return "a ridge roof " + m(widthM) + " wide, " + m(eavesM) + " high at the eaves and " + m(ridgeM)
                    + " at the ridge, " + m(lengthM) + " long";
        }
    }
}
