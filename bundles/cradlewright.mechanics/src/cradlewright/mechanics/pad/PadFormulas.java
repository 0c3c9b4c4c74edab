package cradlewright.mechanics.pad;

import java.util.List;

import cradlewright.mechanics.formula.Formula;

/** The formulas of pads and tolerance stacks, with sources and limits. */
public final class PadFormulas {

    /** Stress. */
    public static final Formula STRESS = new Formula("pad.stress", "Stress of a pad", "sigma = F/A", "equilibrium",
            "force in the middle of the pad, stiff faces", "uneven pressure under bent flanges");

    /** Cork. */
    public static final Formula CORK = new Formula("pad.cork", "Compression of a cork pad",
            "p = F t/(E A); k = E A/t; E 17.0 MPa",
            "Procedia Structural Integrity 12 (2018) 317-329, Table 1 (E 17.0 +-1.8 MPa, collapse 0.78 +-0.06 MPa)",
            "agglomerated cork up to about 5 % strain; lighter core sheets have 5 to 7 MPa (maker's data sheet)",
            "creep over weeks, spread of the modulus of a tenth");

    /** Rubber. */
    public static final Formula RUBBER = new Formula("pad.rubber", "Compression of a rubber pad",
            "k = E_a A/t; E_a = E0 (1 + 2 S^2); disc S = D/(4 t), block S = L W/(2 t (L + W)); 1/E_a gains 1/K if K is given",
            "Strojniski vestnik 60 (2014) 506-511; E0 by hardness from memory",
            "small strain, faces that do not slip, compact outline", "creep, stiffening with strain, slip on greasy faces");

    /** Limits. */
    public static final Formula LIMITS = new Formula("pad.limits", "How far a pad may be pressed",
            "cork: sigma <= 0.4 MPa and strain <= 5 %", "common practice, no source",
            "steady load, cork that collapses at about 0.8 MPa; light cork board gives way from 0.25 MPa (building handbook)",
            "rubber: limits of the maker are needed");

    /** Stack. */
    public static final Formula TOLERANCE_STACK = new Formula("pad.tolerance-stack", "Tolerance of a stack",
            "worst sum t_i; root-sum-square sqrt(sum t_i^2); standard uncertainty sqrt(sum t_i^2/3)",
            "GUM 4.3.7 (rectangular distribution)", "independent pieces", "burrs, paint, bent shims");

    private PadFormulas() {
    }

    /** Returns all formulas of the family. */
    public static List<Formula> all() {
        return List.of(STRESS, CORK, RUBBER, LIMITS, TOLERANCE_STACK);
    }
}
