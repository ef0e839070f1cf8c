package limbway.model.graph;

/**
 * Where a piece lies along the member it is part of, which is fixed at its foot or at both ends.
 *
 * @param memberM length of the whole member [m]
 * @param startM distance of the piece's first end from the member's foot [m]
 * @param endM distance of its last end [m]; less than {@code startM} where the piece runs towards the foot
 */
record Course(double memberM, double startM, double endM) {

    double atM(double share) {
        return startM + share * (endM - startM);
    }

    Course reversed() {
        return new Course(memberM, endM, startM);
    }

    /** Two members in one line are one member as long as both together. */
    Course joinedBy(Course next) {
        Course after = next.isOnward() == isOnward() ? next : next.mirrored();
        double lengthM = memberM + next.memberM;
        return isOnward()
                ? new Course(lengthM, startM, memberM + after.endM)
                : new Course(lengthM, next.memberM + startM, after.endM);
    }

    private boolean isOnward() {
        return endM >= startM;
    }

    /** The same piece, counted from the other end of its member. */
    Course mirrored() {
        return new Course(memberM, memberM - startM, memberM - endM);
    }
}
