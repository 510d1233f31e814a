// SPDX-License-Identifier: EPL-2.0
package garboard.practice.battery;

import static garboard.model.GarboardPackage.Literals.GENERATOR_SET__SYSTEM_VOLTAGE;
import static garboard.model.GarboardPackage.Literals.STARTING_BATTERY__BLOCKS_IN_SERIES;

import java.util.Optional;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.StartingBattery;
import garboard.practice.Figures;
import garboard.quantity.Voltage;

/** The blocks in series make the voltage that the set starts on. */
final class BankVoltageMatchesSet {

    private BankVoltageMatchesSet() {
    }

    static Check<StartingBattery> check() {
        return Check.check("BATTERY-VOLTAGE", StartingBattery.class)
            .title("Battery bank has the set's starting voltage")
            .why("Twice the voltage burns starter, solenoids and controller at the first touch of the key; half of it turns nothing.")
            .basis(Basis.derived("voltages of blocks in series add, those of strings in parallel do not"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("blocks in series times block voltage equals the set's system voltage")
            .needs(Bank.size())
            .needs(GENERATOR_SET__SYSTEM_VOLTAGE)
            .holds(BankVoltageMatchesSet::compare)
            .remedy("Connect as many blocks in series as the set's voltage asks for", BankVoltageMatchesSet::remedy)
            .build();
    }

    private static Comparison compare(Situation<StartingBattery> s) {
        Voltage bank = Bank.nominal(s.subject());
        Limit<Voltage> set = Limit.of(s.set().getSystemVoltage(), "the set's system voltage");
        return Comparison.between(s.subject().getBlocksInSeries() + " x " + Figures.both(s.subject().getBlockVoltage()) + " in series make "
            + Figures.both(bank) + "; the set starts on " + Figures.both(set.value()), bank, set, set);
    }

    private static Optional<Remedy> remedy(Situation<StartingBattery> s) {
        double blocks = s.set().getSystemVoltage().si() / s.subject().getBlockVoltage().si();
        int whole = (int) Math.round(blocks);
        if (whole < 1 || Math.abs(blocks - whole) > 1e-6) {
            return Optional.empty();
        }
        return Optional.of(Remedy.of("Connect " + whole + (whole == 1 ? " block" : " blocks in series") + " for each string")
            .setting(s.subject(), STARTING_BATTERY__BLOCKS_IN_SERIES, whole));
    }
}
