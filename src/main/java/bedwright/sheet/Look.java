package bedwright.sheet;

/**
 * Colours and lines of the marks. The colours are those of Okabe and Ito, "Color Universal Design" (2008), which people
 * with any common colour vision can tell apart; each comes with a hatching or a name as well, and with a dark outline.
 */
final class Look {
    private Look() {}

    /** Colours of the roles, first come first; with more roles they begin again. */
    private static final String[] ROLE_COLOURS = {
        "#D55E00", "#0072B2", "#E69F00", "#009E73", "#CC79A7", "#56B4E9", "#F0E442"
    };
    /** Dashes across a bar, each role's with a rhythm of its own, so that roles can be told without colour. */
    private static final String[] ROLE_DASHES = {
        ".9 1.9", ".9 1.1 .9 3.6", "2.2 2.2", ".9 4.2", ".8 1 .8 1 .8 4", "4 1.2", ".8 1.2 2.4 2.4"
    };

    static final int ROLES = ROLE_COLOURS.length;

    /** Look of the marks, the same on the page and in a file. */
    static final String MARKS = marks();

    /** Number of a role's colour. */
    static int role(int role) {
        return role % ROLES;
    }

    private static String marks() {
        StringBuilder css = new StringBuilder("""
                svg{font-family:"Liberation Sans",Arial,Helvetica,sans-serif;font-size:10px}
                svg text{fill:#111}
                .paper{fill:#fff}
                .bold{font-weight:700}
                .small{font-size:8px}
                .end{text-anchor:end}
                .mid{text-anchor:middle}
                .halo{paint-order:stroke;stroke:#fff;stroke-width:1.6px;stroke-linejoin:round}
                .frame{fill:none;stroke:#999;stroke-width:.6}
                .base{stroke:#555;stroke-width:.7}
                .month{stroke:#bbb;stroke-width:.6}
                .week{stroke:#e4e4e4;stroke-width:.4}
                .hit{fill:#fff;fill-opacity:0}
                .hit:hover{fill:#000;fill-opacity:.08}
                .asked{fill:none;stroke:#555;stroke-width:1;stroke-dasharray:2.5 1.8}
                .promised{fill:none;stroke:#000;stroke-width:1.8}
                .missing{fill:#000}
                .limit{fill:none;stroke:#000;stroke-width:1.5}
                .limit2{fill:none;stroke:#000;stroke-width:1.2;stroke-dasharray:4 2}
                .ink{stroke:#222;stroke-width:1}
                .faint{stroke:#888;stroke-width:.7}
                .plain{fill:#d0d0d0;stroke:#555;stroke-width:.3}
                .tend{stroke:#555;stroke-dasharray:.8 1.8}
                .tendbox{fill:#fff;stroke:#555;stroke-width:.3}
                .cut{fill:#0072B2;stroke:#222;stroke-width:.3}
                .over{fill:#D55E00;stroke:#000;stroke-width:.6}
                .overlines{fill:none;stroke:#000;stroke-width:.7}
                .use{fill:#56B4E9;stroke:#0b4f75;stroke-width:.5}
                .frost{fill:#56B4E9;stroke:#0b4f75;stroke-width:.6}
                .gust{fill:#777;stroke:#333;stroke-width:.3}
                .pest{fill:#E69F00;stroke:#6b4a00;stroke-width:.4}
                .whisker{stroke:#000;stroke-width:.9}
                .usual{fill:none;stroke:#222;stroke-width:1}
                .edge{fill:none;stroke:#000;stroke-width:.6}
                .thin{stroke-width:.25}
                .rest{fill:#fff;stroke:#000;stroke-width:.3}
                .taken{fill:none;stroke:#999;stroke-width:.6}
                .row{fill:#efefef;stroke:#bbb;stroke-width:.4}
                .mark:hover .edge{stroke-width:1.8}
                .break{stroke:#00543d;stroke-width:4;stroke-linecap:round}
                .gap{stroke:#fff;stroke-width:1;stroke-dasharray:2 4}
                .grass{fill:none;stroke:#7a5b00;stroke-width:2;stroke-dasharray:1 2.2}
                .bed{stroke:#222;stroke-width:.6}
                .tunnel{fill:none;stroke:#000;stroke-width:1;stroke-dasharray:5 2}
                .shade0{fill:#4f86b5}
                .shade1{fill:#86b0d0}
                .shade2{fill:#b5d0e3}
                .shade3{fill:#dbe8f2}
                .shade4{fill:#fff}
                .arrow{fill:#222;stroke:#222;stroke-width:1}
                """);
        for (int r = 0; r < ROLES; r++) {
            css.append(".fill")
                    .append(r)
                    .append("{fill:")
                    .append(ROLE_COLOURS[r])
                    .append(";}\n");
            css.append(".tint").append(r).append("{fill:").append(ROLE_COLOURS[r]);
            css.append(";fill-opacity:.38;stroke:").append(ROLE_COLOURS[r]).append(";stroke-width:.5}\n");
            css.append(".hatch")
                    .append(r)
                    .append("{stroke:")
                    .append(ROLE_COLOURS[r])
                    .append(";stroke-dasharray:");
            css.append(ROLE_DASHES[r]).append("}\n");
            css.append(".dot").append(r).append("{stroke:").append(ROLE_COLOURS[r]);
            css.append(";stroke-width:1.5;stroke-linecap:round;stroke-dasharray:0 3}\n");
        }
        return css.toString();
    }
}
