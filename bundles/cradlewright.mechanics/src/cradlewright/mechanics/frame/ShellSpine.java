package cradlewright.mechanics.frame;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.geometry.Vec3;

/**
 * A body shell as a single elastic line along its length with rigid arms to its mounts: it twists and bends like the shell as
 * a whole. See {@link FrameFormulas#SHELL_SPINE}.
 */
public final class ShellSpine {

    /** Name of the only member. */
    public static final String SPINE = "spine";
    /** Name of the node at the front end. */
    public static final String FRONT = "spine front";
    /** Name of the node at the rear end. */
    public static final String REAR = "spine rear";
    /** Bending stiffness over axial stiffness and length squared: the shell is not what gives in a pull along x. */
    private static final double AXIAL_STIFFNESS = 1000;

    private final FrameModel model;
    private final MemberAxes axes;

    private ShellSpine(FrameModel model) {
        this.model = model;
        axes = model.axes(SPINE);
    }

    /**
     * Returns a spine with G J = K_t times the distance of the axle lines and the same bending stiffness both ways.
     *
     * @param front front end of the spine, m
     * @param rear rear end of the spine, m, not straight above or below the front end; mounts beyond its ends hang on rigid arms
     * @param axleSpan distance of the two lines between which the torsional stiffness was measured, m
     * @param torsionalStiffness K_t, torque over the turn of one line against the other, N*m/rad
     * @param bendingStiffness E I, N*m2
     * @throws IllegalArgumentException for a value that is not above zero, or ends that are one
     */
    public static ShellSpine of(Vec3 front, Vec3 rear, double axleSpan, double torsionalStiffness, double bendingStiffness) {
        double length = Require.positive(rear.minus(front).norm(), "length of the spine");
        Require.positive(axleSpan, "distance of the axle lines");
        Require.positive(torsionalStiffness, "torsional stiffness of the shell");
        Require.positive(bendingStiffness, "bending stiffness of the shell");
        double axial = AXIAL_STIFFNESS * bendingStiffness / (length * length);
        MemberSection section = MemberSection.withoutShear(1, 1, axial, bendingStiffness, bendingStiffness,
                torsionalStiffness * axleSpan);
        return new ShellSpine(FrameModel.builder().node(FRONT, front).node(REAR, rear)
                .member(FrameMember.of(SPINE, FRONT, REAR, section, Vec3.UP)).build());
    }

    /** Returns the frame. */
    public FrameModel model() {
        return model;
    }

    /** Returns the free body. */
    public FrameStructure freeBody() {
        return FrameStructure.freeBody(model);
    }

    /** Returns a point in space as fixed by a rigid arm to the spine, to its nearer end if it lies beyond the spine. */
    public FramePoint pointAt(Vec3 place) {
        Vectors.finite(place, "place on the shell");
        double distance = Math.min(Math.max(place.minus(axes.origin()).dot(axes.x()), 0), axes.length());
        return FramePoint.member(SPINE, distance, place.minus(axes.point(distance)));
    }
}
