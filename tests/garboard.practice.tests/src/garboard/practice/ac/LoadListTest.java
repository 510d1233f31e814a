// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.junit.jupiter.api.Test;

import garboard.model.CommissioningRecord;
import garboard.model.ElectricalLoad;
import garboard.model.LoadKind;
import garboard.model.MotorStarting;
import garboard.practice.testing.Installation;
import garboard.quantity.Power;
import garboard.quantity.Ratio;

class LoadListTest {

    private final CommissioningRecord record = Installation.empty();

    private List<String> names(List<ElectricalLoad> loads) {
        return loads.stream().map(ElectricalLoad::getName).toList();
    }

    // DDS 310-1 as quoted: mutually exclusive loads are counted once
    @Test
    void ofLoadsThatExcludeEachOtherTheLargestCounts() {
        Board.load(record, "heater", "2 kW", "1").setExclusiveWith("oven");
        Board.load(record, "oven", "3 kW", "1");
        Board.load(record, "lights", "1 kW", "1");
        assertThat(names(LoadList.busiest(record.getAcOutput()).loads())).containsExactly("oven", "lights");
        assertThat(LoadList.busiest(record.getAcOutput()).demand()).isEqualTo(Power.of(4000));
    }

    @Test
    void twoThatExcludeAThirdRunTogetherWhereTheyAskForMore() {
        Board.load(record, "a", "2 kW", "1").setExclusiveWith("b");
        Board.load(record, "b", "3 kW", "1");
        Board.load(record, "c", "2 kW", "1").setExclusiveWith(" B ; nothing");
        assertThat(names(LoadList.busiest(record.getAcOutput()).loads())).containsExactly("a", "c");
        record.getAcOutput().getLoads().get(1).setPower(Power.of(5, "kW"));
        assertThat(names(LoadList.busiest(record.getAcOutput()).loads())).containsExactly("b");
    }

    @Test
    void manyPairsAreToldAtOnce() {
        for (int i = 0; i < 40; i++) {
            Board.load(record, "a" + i, "2 kW", "1").setExclusiveWith("b" + i);
            Board.load(record, "b" + i, "1 kW", "1");
        }
        assertThat(LoadList.busiest(record.getAcOutput()).demand()).isEqualTo(Power.of(80_000));
    }

    @Test
    void aLoadCountsInTheConditionsThatItNames() {
        Board.load(record, "cooker", "4 kW", "1").setCondition("harbour; at anchor");
        Board.load(record, "pump", "1 kW", "1").setCondition("At Anchor");
        Board.load(record, "refrigerator", "0.5 kW", "1");
        List<LoadList.Running> conditions = LoadList.conditions(record.getAcOutput());
        assertThat(conditions).extracting(LoadList.Running::name).containsExactly("harbour", "at anchor");
        assertThat(conditions).extracting(LoadList.Running::demand).containsExactly(Power.of(4500), Power.of(5500));
        assertThat(LoadList.lightest(record.getAcOutput()).name()).isEqualTo("harbour");
    }

    // IMO EEDI guideline form: pump 2.2 kW / .80, .9 x .5 x .6 = .27 -> .74 kW; 12.0 kW and 9.0 kvar -> 15.0 kVA
    @Test
    void demandIsInputTimesUseFactor() {
        ElectricalLoad pump = Board.motor(record, "2.2 kW", "0.8", MotorStarting.DIRECT_ON_LINE);
        pump.setEfficiency(Ratio.of(0.8));
        pump.setDemandFactor(Ratio.of(0.27));
        assertThat(LoadList.demand(pump).in("kW")).isCloseTo(0.7425, within(1e-9));
        pump.setEfficiency(null);
        pump.setPower(Power.of(12, "kW"));
        pump.setDemandFactor(Ratio.of(1));
        assertThat(LoadList.busiest(record.getAcOutput()).apparent().in("kVA")).isCloseTo(15, within(1e-9));
    }

    // recomputed from the worked load list of a 230 V yacht (demand factors common practice): 22.04 kW connected, 11.43 kW, 12.66 kVA
    @Test
    void aWholeList() {
        String[][] list = { { "3.60", ".85", ".80" }, { "0.786", ".75", ".80" }, { "2.00", "1", ".40" }, { "6.00", "1", ".40" }, { ".60", ".80", ".50" },
            { "1.50", ".70", ".60" }, { "2.75", ".80", ".50" }, { "1.50", ".95", ".50" }, { ".80", ".90", ".50" }, { "2.50", ".90", ".40" } };
        for (String[] line : list) {
            ElectricalLoad load = Board.load(record, line[0], line[0] + " kW", line[2]);
            load.setKind(LoadKind.MIXED);
            load.setPowerFactor(Ratio.valueOf(line[1]));
        }
        LoadList.Running running = LoadList.busiest(record.getAcOutput());
        assertThat(running.demand().in("kW")).isCloseTo(11.43, within(0.005));
        assertThat(running.apparent().in("kVA")).isCloseTo(12.66, within(0.005));
    }
}
