// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.Revision;

/** That the record itself travels in the workbook, how to get it back, and its revisions. */
final class RecordSheet {

    private RecordSheet() {
    }

    static Optional<Sheet> of(Material material) {
        CommissioningRecord record = material.record();
        var blocks = new ArrayList<Block>();
        blocks.add(Block.body("This workbook carries the whole record from which it was written, every entry as it was given, photographs "
            + "included, and the verdicts of the day. Open the workbook in Garboard to work on with the record: it comes out exactly as it went in. "
            + "What is typed into the cells of this workbook does not change the record."));
        blocks.add(Block.body("The record lies in the workbook's custom XML, in the element \"record\" of the namespace urn:garboard:workbook:1: "
            + "compressed with gzip and written in base64, with the SHA-256 sum of the file beside it. Any program that reads zip and XML gets at it. "
            + "Copying sheets into a new workbook, or saving in another format, leaves it behind."));
        blocks.add(new Block.KeyValues(List.of(Block.Entry.of("Record number", Material.orMissing(record.getRecordNumber())),
            Block.Entry.of("Format", Material.orMissing(record.getFormatVersion())),
            Block.Entry.of("Begun on", Material.orMissing(Material.orEmpty(record.getCreatedOn()))),
            Block.Entry.of("Practices", record.getPractices().isEmpty() ? "all that the program has" : String.join(", ", record.getPractices())),
            Block.Entry.of("Written by", "Garboard " + material.options().programVersion()))));
        Material.present(record.getRemarks()).ifPresent(remarks -> {
            blocks.add(new Block.Heading("Remarks"));
            blocks.add(Block.body(remarks));
        });
        if (!record.getRevisions().isEmpty()) {
            blocks.add(new Block.Heading("Revisions"));
            blocks.add(revisions(record.getRevisions()));
        }
        return Optional.of(new Sheet("Record", "The record in this workbook", Orientation.PORTRAIT, blocks));
    }

    private static Table revisions(List<Revision> revisions) {
        var table = Table.of(Table.number("number", "No", 14), Table.day("date", "Date", 24), Table.text("by", "By", 44),
            Table.text("what", "What changed", 100));
        revisions.forEach(revision -> table.row(revision.getNumber() == null ? Cell.BLANK : Cell.count(revision.getNumber()),
            Days.cell(revision.getDate()), Cell.text(Material.orEmpty(revision.getBy())), Cell.text(Material.orEmpty(revision.getDescription()))));
        return table.build();
    }
}
