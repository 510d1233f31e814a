// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES;

import java.util.List;

import garboard.checks.FeaturePath;
import garboard.model.CommissioningRecord;
import garboard.model.PipeFitting;
import garboard.model.PipeFittingKind;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;
import garboard.physics.pipe.DarcyWeisbach;
import garboard.physics.pipe.Fitting;
import garboard.physics.pipe.Medium;
import garboard.physics.pipe.PipeRun;
import garboard.physics.pipe.Wall;
import garboard.physics.rawwater.Suction;
import garboard.quantity.Length;
import garboard.quantity.Temperature;
import garboard.quantity.VolumeFlow;

/** The hoses between hull and pump, as pipe physics sees them. */
final class SuctionLine {

    /** Colebrook's formula goes no further; a corrugated 3/4 in hose lies just beyond. */
    private static final double GREATEST_RELATIVE_ROUGHNESS = 0.05;

    private final List<WaterHoseRun> hoses;
    private final VolumeFlow flow;
    private final Temperature sea;

    private SuctionLine(List<WaterHoseRun> hoses, VolumeFlow flow, Temperature sea) {
        this.hoses = hoses;
        this.flow = flow;
        this.sea = sea;
    }

    /** The suction hoses of the record; a place to go on from with {@link FeaturePath#then}. Reads the section of each hose. */
    static FeaturePath hoses() {
        return path(RAW_WATER_CIRCUIT__HOSES).where(WaterHoseRun.class, SuctionLine::isSuction);
    }

    static boolean isSuction(WaterHoseRun hose) {
        return hose.getSection() == WaterSection.SUCTION;
    }

    static List<WaterHoseRun> hoses(CommissioningRecord record) {
        return record.getRawWater().getHoses().stream().filter(SuctionLine::isSuction).toList();
    }

    /** The line of a record in which everything that it reads is entered. */
    static SuctionLine of(CommissioningRecord record) {
        var rawWater = record.getRawWater();
        return new SuctionLine(hoses(record), rawWater.getPump().getRatedFlow(), rawWater.getDesignSeaTemperature());
    }

    /** Lift and losses as a column of sea water. */
    Length head(Length lift) {
        return headWithBoresOfAtLeast(Length.of(0), lift);
    }

    /** The same with every hose of less than this bore replaced by one of this bore. */
    Length headWithBoresOfAtLeast(Length bore, Length lift) {
        Length head = lift;
        for (WaterHoseRun hose : hoses) {
            Length actual = hose.getBore().isLessThan(bore) ? bore : hose.getBore();
            head = new Suction(DarcyWeisbach.loss(run(hose, actual), flow, Medium.SEA_WATER.at(sea)), head).head();
        }
        return head;
    }

    private static PipeRun run(WaterHoseRun hose, Length bore) {
        double roughnessM = Math.min(wall(hose.getKind()).roughness().si(), GREATEST_RELATIVE_ROUGHNESS * bore.si());
        PipeRun run = PipeRun.ofBore(bore).withLength(hose.getLength()).withRoughness(Length.of(roughnessM));
        for (PipeFitting fitting : hose.getFittings()) {
            if (fitting.getCount() > 0) {
                run = run.plus(fitting.getCount(), fitting(fitting.getKind()));
            }
        }
        return run;
    }

    private static Wall wall(WaterHoseKind kind) {
        return switch (kind) {
            case CORRUGATED_BORE -> Wall.RUBBER_HOSE_WIRE_REINFORCED_ROUGH_BORE;
            case RIGID_METAL_PIPE -> Wall.STAINLESS_STEEL;
            case RIGID_PLASTIC_PIPE -> Wall.DRAWN_TUBE_OR_PLASTIC;
            case WIRE_REINFORCED_SMOOTH_BORE, SOFT_WALL, NOT_ENTERED -> Wall.RUBBER_HOSE_SMOOTH;
        };
    }

    private static Fitting fitting(PipeFittingKind kind) {
        return Fitting.valueOf(kind.name());
    }
}
