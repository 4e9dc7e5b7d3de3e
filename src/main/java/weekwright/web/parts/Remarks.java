package weekwright.web.parts;

import java.util.List;
import weekwright.base.Problem;
import weekwright.render.Formats;

/** What was odd but possible, behind the line that says what was saved. */
public final class Remarks {
    private Remarks() {}

    /** The sentences of remarks, one after the other, each with a blank before it. */
    public static String said(List<Problem> remarks) {
        StringBuilder text = new StringBuilder();
        for (Problem remark : remarks) {
            String of = remark.read().isEmpty() && !remark.column().isEmpty()
                    ? remark.column().replace('_', ' ') + " "
                    : "";
            text.append(' ').append(Formats.sentence(of + remark.sentence())).append('.');
        }
        return text.toString();
    }
}
