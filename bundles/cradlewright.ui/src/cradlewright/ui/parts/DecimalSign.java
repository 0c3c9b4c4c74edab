package cradlewright.ui.parts;

import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** How decimals are written in pasted cells. */
enum DecimalSign {
    /** 12.5 */
    POINT(Locale.ROOT, Pattern.compile("[-+−]?\\d*\\.(?!\\d{3}(?!\\d))\\d+.*")),
    /** 12,5 */
    COMMA(Locale.GERMANY, Pattern.compile("[-+−]?\\d*,(?!\\d{3}(?!\\d))\\d+.*"));

    private final Locale locale;
    private final Pattern sure;

    DecimalSign(Locale locale, Pattern sure) {
        this.locale = locale;
        this.sure = sure;
    }

    Locale locale() {
        return locale;
    }

    /** Proposes the sign that more cells can only mean; where three digits follow each sign, that of the reader. */
    static DecimalSign of(List<List<String>> rows, Locale reader) {
        long points = count(rows, POINT);
        long commas = count(rows, COMMA);
        if (points == commas) {
            return DecimalFormatSymbols.getInstance(reader).getDecimalSeparator() == ',' ? COMMA : POINT;
        }
        return points > commas ? POINT : COMMA;
    }

    private static long count(List<List<String>> rows, DecimalSign sign) {
        return rows.stream().flatMap(List::stream).filter(cell -> sign.sure.matcher(cell).matches()).count();
    }
}
