// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Optional;

import garboard.model.Instrument;

/** What was measured with. */
final class InstrumentsSheet {

    private InstrumentsSheet() {
    }

    static Optional<Sheet> of(Material material) {
        List<Instrument> instruments = material.record().getInstruments();
        if (instruments.isEmpty()) {
            return Optional.empty();
        }
        var table = Table.of(Table.text("name", "Instrument", 50), Table.text("serial", "Serial number", 34),
            Table.text("measures", "Measures", 38), Table.text("accuracy", "Accuracy stated", 36), Table.day("calibrated", "Calibrated on", 24))
            .repeated();
        instruments.forEach(instrument -> table.row(Cell.text(Material.orEmpty(instrument.getName())),
            Cell.text(Material.orEmpty(instrument.getSerialNumber())), Cell.text(Material.orEmpty(instrument.getMeasures())),
            Cell.text(Material.orEmpty(instrument.getAccuracyStated())), Days.cell(instrument.getCalibratedOn())));
        return Optional.of(new Sheet("Instruments", "Instruments", Orientation.PORTRAIT, List.of(table.build())));
    }
}
