// SPDX-License-Identifier: EPL-2.0
package garboard.practice.siphon;

import static garboard.model.GarboardPackage.Literals.SIPHON_BREAK__SERVICED_ON;

import garboard.checks.Check;
import garboard.checks.Gravity;
import garboard.model.SiphonBreak;
import garboard.practice.Interval;
import garboard.practice.Sources;

/** The siphon break was opened and cleaned within the year: salt glues its valve shut. */
final class SiphonServiced {

    private static final int MONTHS = 12;

    private SiphonServiced() {
    }

    static Check<SiphonBreak> check() {
        return Check.check("SIPHON-SERVICED", SiphonBreak.class)
            .title("Siphon break was serviced within the year")
            .why("Salt glues the valve; one that does not open breaks no siphon, and nobody sees it until the engine is full.")
            .basis(Sources.TRADE_PRESS.othersSay("Gerr asks for inspection from time to time, without an interval"))
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("opened, descaled and tested at least every 12 months")
            .applies(SiphonConditions.breakFitted())
            .needs(SIPHON_BREAK__SERVICED_ON)
            .holds(s -> Interval.ofMonths(MONTHS).since(s.subject().getServicedOn(), "the siphon break was serviced").on(s.today()))
            .remedy("Open the vent, descale it with vinegar, rinse it, see that the valve moves freely, and enter the date; replace a stiff valve")
            .build();
    }
}
