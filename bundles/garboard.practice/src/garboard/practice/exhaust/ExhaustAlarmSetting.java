// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Temperature;

/** The exhaust temperature alarm is set low enough to speak before the hose burns. */
final class ExhaustAlarmSetting {

    private static final Temperature HIGHEST = Temperature.of(74, "degC");

    private ExhaustAlarmSetting() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-ALARM-SETTING", ExhaustRun.class)
            .title("Exhaust temperature alarm is set below the heat that burns hose")
            .why("A sensor strapped to the hose reads far less than the gas inside; set high, it speaks when the hose is gone.")
            .basis(Sources.TRADE_PRESS)
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at most 74 degC (165 degF) for a sensor on the outside")
            .applies(ExhaustConditions.temperatureAlarmFitted())
            .needs(EXHAUST_RUN__TEMPERATURE_ALARM_SETTING)
            .holds(s -> Comparison.atMost("the alarm is set to " + Figures.both(setting(s)), setting(s), Limit.of(HIGHEST, "trade press: 165 degF")))
            .remedy("Fit a sensor with a lower setting", s -> Optional.of(Remedy.of("Fit or set a sensor that speaks at " + Figures.both(HIGHEST))
                .setting(s.subject(), EXHAUST_RUN__TEMPERATURE_ALARM_SETTING, HIGHEST)))
            .build();
    }

    private static Temperature setting(Situation<ExhaustRun> s) {
        return s.subject().getTemperatureAlarmSetting();
    }
}
