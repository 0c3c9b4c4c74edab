package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A piece: shell, chassis, engine or box.
 *
 * @param torsionalStiffness in N*m/rad between its first and last supports
 * @param bendingStiffness EI in N*m2
 * @param outline corners of its outline, in m
 * @param parts the parts that belong to it
 */
public record PieceFacts(String id, String name, PieceKind kind, Optional<Value> torsionalStiffness, Optional<Value> bendingStiffness,
        List<Vec3> outline, List<PartFacts> parts) implements Fact {
}
