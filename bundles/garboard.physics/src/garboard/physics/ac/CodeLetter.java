// SPDX-License-Identifier: EPL-2.0
package garboard.physics.ac;

import java.util.Optional;

import garboard.physics.Argument;
import garboard.quantity.ApparentPower;
import garboard.quantity.Power;

/**
 * Code letter on a motor's plate: apparent power at locked rotor for each horsepower ({@link AcSources#CODE_LETTERS}). I, O and Q are not used.
 */
public enum CodeLetter {
    A(0), B(3.15), C(3.55), D(4.0), E(4.5), F(5.0), G(5.6), H(6.3), J(7.1), K(8.0), L(9.0), M(10.0), N(11.2), P(12.5), R(14.0), S(16.0),
    T(18.0), U(20.0), V(22.4);

    private static final double HORSEPOWER_W = 745.6998715822702;

    private final double lowestKvaPerHp;

    CodeLetter(double lowestKvaPerHp) {
        this.lowestKvaPerHp = lowestKvaPerHp;
    }

    /** Least apparent power at locked rotor of a motor of that shaft power. */
    public ApparentPower lowest(Power shaft) {
        return starting(shaft, lowestKvaPerHp);
    }

    /** The figure to reckon with, just not reached; V has none. */
    public Optional<ApparentPower> highest(Power shaft) {
        return this == V ? Optional.empty() : Optional.of(starting(shaft, values()[ordinal() + 1].lowestKvaPerHp));
    }

    private static ApparentPower starting(Power shaft, double kvaPerHp) {
        return ApparentPower.of(Argument.positive("shaft power", shaft) / HORSEPOWER_W * kvaPerHp * 1000);
    }
}
