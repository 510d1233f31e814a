// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/** Record files written out by hand. */
final class RecordXml {

    static final String HEAD = "xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\" xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" "
        + "xmlns:garboard=\"urn:garboard:record:1\"";

    private RecordXml() {
    }

    /** {@return a record file of the current version with this content, the content beginning in line 2} */
    static String of(String content) {
        return "<garboard:CommissioningRecord " + HEAD + " formatVersion=\"1.0\">\n" + content + "\n</garboard:CommissioningRecord>\n";
    }

    static RecordFile read(String text) throws RecordReadException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    static RecordFile read(byte[] bytes) throws RecordReadException {
        return RecordFile.read(new ByteArrayInputStream(bytes), "boat.garboard");
    }

    static String saved(RecordFile file) throws RecordWriteException {
        return new String(file.toBytes(), StandardCharsets.UTF_8);
    }
}
