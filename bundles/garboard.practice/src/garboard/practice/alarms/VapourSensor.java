// SPDX-License-Identifier: EPL-2.0
package garboard.practice.alarms;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_DETECTOR;
import static garboard.model.GarboardPackage.Literals.ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW;

import garboard.checks.Check;
import garboard.checks.Condition;
import garboard.checks.Gravity;
import garboard.model.AlarmsAndSafety;
import garboard.model.Answer;
import garboard.practice.Answers;

/** The sensor of the vapour detector sits where the vapour is: everything but authority. */
final class VapourSensor {

    private VapourSensor() {
    }

    static Check.Builder<AlarmsAndSafety> check(String id) {
        return Check.check(id, AlarmsAndSafety.class)
            .why("Gasoline vapour is heavier than air; a sensor that sits high tells of it when the bilge is full.")
            .gravity(Gravity.DANGER_TO_PEOPLE)
            .limit("at the lowest part of the space, above the bilge water to be expected")
            .applies(Condition.<AlarmsAndSafety>when("where a vapour detector is fitted").known(path(ALARMS_AND_SAFETY__VAPOUR_DETECTOR))
                .test(s -> s.subject().getVapourDetector() == Answer.YES, "no vapour detector is fitted"))
            .needs(ALARMS_AND_SAFETY__VAPOUR_SENSOR_LOW)
            .holds(s -> Answers.demanded(s.subject().getVapourSensorLow(), "the sensor sits low, above bilge water",
                "the sensor does not sit low above bilge water"))
            .remedy("Move the sensor to the lowest part of the space, above bilge water");
    }
}
