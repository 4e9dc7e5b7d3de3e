package weekwright.render.chart;

/**
 * How wide a line of letters comes out, so that labels do not run into each other. Advance widths are those of the font
 * files that ship with the sheets (Archivo at weight 400 and 650, Besley at 600), in thousandths of the size, from the
 * space to the tilde; figures stand on equal widths.
 */
enum Lettering {
    TEXT(
            650, 209, 273, 374, 582, 510, 950, 692, 209, 355, 355, 407, 625, 277, 333, 277, 294, 573, 573, 573, 573,
            573, 573, 573, 573, 573, 573, 296, 296, 625, 625, 625, 578, 1005, 682, 698, 728, 734, 677, 612, 796, 736,
            267, 559, 662, 536, 847, 736, 788, 665, 788, 727, 673, 606, 731, 648, 924, 680, 655, 635, 296, 294, 296,
            625, 485, 187, 545, 567, 519, 567, 548, 280, 556, 563, 225, 223, 514, 225, 860, 563, 570, 567, 567, 332,
            510, 297, 562, 504, 723, 513, 504, 498, 353, 245, 353, 625),
    BOLD(
            680, 198, 296, 450, 591, 549, 970, 746, 249, 360, 360, 407, 639, 304, 333, 304, 299, 587, 587, 587, 587,
            587, 587, 587, 587, 587, 587, 336, 336, 639, 639, 639, 613, 999, 717, 714, 727, 733, 677, 615, 798, 743,
            291, 594, 710, 581, 858, 743, 788, 676, 788, 724, 673, 630, 736, 683, 959, 696, 688, 644, 344, 299, 344,
            639, 512, 219, 568, 600, 560, 600, 573, 316, 599, 593, 259, 257, 556, 259, 876, 593, 606, 600, 600, 371,
            549, 328, 592, 538, 778, 559, 538, 514, 393, 249, 393, 639),
    HEAD(
            780, 300, 343, 436, 660, 680, 1060, 885, 230, 463, 463, 635, 530, 283, 460, 260, 520, 618, 548, 612, 556,
            574, 556, 584, 547, 564, 584, 235, 254, 560, 560, 560, 560, 1087, 887, 778, 822, 852, 782, 750, 892, 922,
            458, 626, 902, 743, 1086, 899, 854, 723, 854, 826, 692, 786, 868, 887, 1213, 885, 815, 770, 349, 520, 349,
            545, 560, 395, 598, 669, 568, 669, 572, 412, 626, 686, 362, 324, 662, 349, 972, 704, 592, 667, 656, 534,
            526, 394, 692, 609, 886, 624, 647, 554, 302, 300, 296, 688);

    /** The space between words is widened by this much of the size, as the style sheet does. */
    private static final double WORD_SPACE = 0.06;

    private final int otherLetters;
    private final int[] advances;

    Lettering(int otherLetters, int... advances) {
        this.otherLetters = otherLetters;
        this.advances = advances;
    }

    /** Pixels of one line at this size. */
    double width(String text, double size) {
        double sum = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i) == '\u00a0' ? ' ' : text.charAt(i);
            int index = c - ' ';
            sum += index >= 0 && index < advances.length ? advances[index] / 1000.0 : otherLetters / 1000.0;
            sum += c == ' ' ? WORD_SPACE : 0;
        }
        return sum * size;
    }
}
