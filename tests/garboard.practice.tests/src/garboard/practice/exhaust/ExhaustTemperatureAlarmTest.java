// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__TEMPERATURE_ALARM;

import org.junit.jupiter.api.Test;

import garboard.model.Answer;
import garboard.practice.testing.Question;

class ExhaustTemperatureAlarmTest {

    // ABYC P-1 as quoted
    @Test
    void followsTheAnswer() {
        Question.of(ExhaustTemperatureAlarm.check(), EXHAUST_RUN__TEMPERATURE_ALARM).at(record -> record.getExhaust())
            .wants(Answer.YES, "exhaust.temperatureAlarm");
    }
}
