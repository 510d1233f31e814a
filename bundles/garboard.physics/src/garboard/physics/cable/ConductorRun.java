// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import garboard.physics.Argument;

/**
 * A conductor as it is laid.
 *
 * @param size as printed on the jacket
 * @param insulation temperature rating of the insulation
 * @param inEngineSpace any part of the run lies in an engine space (50 degC)
 * @param carryingTogether current-carrying conductors in the same bundle, duct or cable, itself included; neutrals count, grounding conductors do not
 */
public record ConductorRun(ConductorSize size, InsulationRating insulation, boolean inEngineSpace, int carryingTogether) {

    public ConductorRun {
        Argument.atLeastOne("current-carrying conductors", carryingTogether);
    }

    /** Alone and outside engine spaces. */
    public static ConductorRun of(ConductorSize size, InsulationRating insulation) {
        return new ConductorRun(size, insulation, false, 1);
    }

    public ConductorRun withEngineSpace() {
        return new ConductorRun(size, insulation, true, carryingTogether);
    }

    public ConductorRun withCarryingTogether(int conductors) {
        return new ConductorRun(size, insulation, inEngineSpace, conductors);
    }
}
