package cradlewright.ui.recovery;

import cradlewright.model.io.Digest;
import cradlewright.model.io.FileKind;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;

/**
 * What a file of a shop was at a moment at which it was not saved.
 *
 * @param path path of the file below the folder of the shop
 * @param from SHA-256 of the file on disk on which the edits were made; empty for a file that was never saved
 * @param made when
 * @param text the bytes that saving would have written
 */
record UnsavedCopy(String path, Optional<String> from, Instant made, byte[] text) {

    private static final String FORM = "unsaved copy 1";
    private static final int LINES = 5;

    /** Returns the kind of the file. */
    FileKind kind() {
        return FileKind.of(path).orElseThrow();
    }

    /** Returns the bytes in which the copy is kept: five lines, of which the last is the SHA-256 of all that follows, then the text. */
    byte[] written() {
        String head = String.join("\n", FORM, path, from.orElse(""), made.toString(), Digest.of(text)) + "\n";
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.getBytes(StandardCharsets.UTF_8));
        out.writeBytes(text);
        return out.toByteArray();
    }

    /**
     * Reads a copy.
     *
     * @throws IOException when the bytes are not whole or not of a copy
     */
    static UnsavedCopy read(byte[] bytes) throws IOException {
        String[] lines = new String[LINES];
        int at = 0;
        for (int i = 0; i < LINES; i++) {
            int end = at;
            while (end < bytes.length && bytes[end] != '\n') {
                end++;
            }
            if (end == bytes.length) {
                throw new IOException("it ends too early");
            }
            lines[i] = new String(bytes, at, end - at, StandardCharsets.UTF_8);
            at = end + 1;
        }
        byte[] text = Arrays.copyOfRange(bytes, at, bytes.length);
        if (!lines[0].equals(FORM) || FileKind.of(lines[1]).isEmpty() || !lines[LINES - 1].equals(Digest.of(text))) {
            throw new IOException("it is damaged");
        }
        try {
            return new UnsavedCopy(lines[1], Optional.of(lines[2]).filter(from -> !from.isEmpty()), Instant.parse(lines[3]), text);
        } catch (DateTimeException e) {
            throw new IOException("it is damaged", e);
        }
    }
}
