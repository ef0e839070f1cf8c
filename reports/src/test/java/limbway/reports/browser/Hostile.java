package limbway.reports.browser;

import java.util.List;

/** Texts that a page must show and never obey. Each tries another way into it. */
final class Hostile {

    /** Letters that are written from right to left: allowed in every name. */
    static final String RIGHT_TO_LEFT_WORD = "\u05e9\u05dc\u05d5\u05dd";

    /** Markup, for a first look at which texts are free. */
    static final String MARKUP = "<img src=x onerror=hacked=1>";

    private static final String RUN = "window.hacked=1";

    private Hostile() {}

    /** Fifty texts, none of which holds another. */
    static List<String> texts() {
        return List.of(
                // markup
                "<script>" + RUN + "</script>",
                "</script><script>alert(1)</script>",
                MARKUP,
                "<svg onload=alert(2)>",
                "<svg><script>alert(3)</script></svg>",
                "<iframe srcdoc='<script>parent.hacked=1</script>'></iframe>",
                "<body onload=alert(4)>",
                "<details open ontoggle=alert(5)><summary>x</summary></details>",
                "<input autofocus onfocus=alert(6)>",
                "<video><source onerror=alert(7)></video>",
                "<style>@import 'http://bad.invalid/a.css';</style>",
                "<link rel=stylesheet href=http://bad.invalid/b.css>",
                "<meta http-equiv=refresh content='0;url=http://bad.invalid/c'>",
                "<base href=http://bad.invalid/d/>",
                "<a href=\"javascript:alert(8)\">go</a>",
                "<form action=http://bad.invalid/e><button>go</button></form>",
                "<object data=http://bad.invalid/f></object>",
                "<math><mi xlink:href=javascript:alert(9)>x</mi></math>",
                "<template><img src=x onerror=alert(10)></template>",
                // out of where it stands
                "</title><img src=x onerror=alert(11)>",
                "</textarea></style></noscript><img src=x onerror=alert(12)>",
                "</text></svg><img src=x onerror=alert(13)>",
                "\"><img src=x onerror=alert(14)>",
                "' onmouseover='alert(15)",
                "\" autofocus tabindex=0 onfocus=\"alert(16)",
                "--><img src=x onerror=alert(17)>",
                "<!-- never closed",
                "]]><img src=x onerror=alert(18)>",
                "<![CDATA[ open",
                "<?xml version='1.0'?><!DOCTYPE x [<!ENTITY y SYSTEM 'file:///etc/hostname'>]>&y;",
                // addresses and scripts
                "javascript:alert(19)",
                "data:text/html,<script>alert(20)</script>",
                "');alert(21);//",
                "\\\";alert(22);//",
                "`${alert(23)}`",
                "</script\u2028alert(24)//",
                // templates
                "{{constructor.constructor('alert(25)')()}}",
                "${7*7} #{7*7} <%= 7*7 %>",
                // escapes that must not be undone
                "&lt;script&gt;alert(26)&lt;/script&gt;",
                "&#60;img src=x onerror=alert(27)&#62; &nbsp &copy;",
                "\\u003cscript\\u003e \\x3cb\\x3e %3Cscript%3E",
                "%s %n %1$s {0}",
                // characters
                "nothing\u0000after",
                "bell\u0007 and escape\u001b[31m",
                "left \u202eright\u202c left \u2066isle",
                RIGHT_TO_LEFT_WORD + " (7) \u0645\u0631\u062d\u0628\u0627",
                "\ud83e\udda7\u200d\u2642\ufe0f \ud83c\uddee\ud83c\udde9 ape",
                "zero\u200bwidth\u200djoin\u00adsoft",
                "a".repeat(200),
                // spreadsheets
                "=HYPERLINK(\"http://bad.invalid/g\",\"x\")&cmd|' /c calc'!A0");
    }
}
