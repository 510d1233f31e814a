// SPDX-License-Identifier: EPL-2.0
package garboard.physics.pipe;

import garboard.physics.Argument;
import garboard.quantity.Density;
import garboard.quantity.KinematicViscosity;

/** What flow needs to know of a fluid; both more than 0. */
public record Fluid(Density density, KinematicViscosity viscosity) {

    public Fluid {
        Argument.positive("density", density);
        Argument.positive("viscosity", viscosity);
    }
}
