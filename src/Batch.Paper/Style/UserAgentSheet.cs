namespace Batch.Paper.Style;

/// <summary>The default look of the promised elements, after the rendering section of the HTML standard.</summary>
internal static class UserAgentSheet
{
    public const string Text = """
        html, body, div, section, article, header, footer, main, nav, aside, address, p, h1, h2, h3, h4, h5, h6, ul, ol, figure, figcaption, hr, pre, blockquote, dl, dt, dd, details, summary, fieldset, form { display: block }
        head, title, style, script, meta, link, base, template, noscript { display: none }
        [hidden] { display: none }
        body { margin: 8px }
        p { margin: 1em 0 }
        h1 { font-size: 2em; font-weight: bold; margin: .67em 0 }
        h2 { font-size: 1.5em; font-weight: bold; margin: .83em 0 }
        h3 { font-size: 1.17em; font-weight: bold; margin: 1em 0 }
        h4 { font-weight: bold; margin: 1.33em 0 }
        h5 { font-size: .83em; font-weight: bold; margin: 1.67em 0 }
        h6 { font-size: .67em; font-weight: bold; margin: 2.33em 0 }
        h1, h2, h3, h4, h5, h6 { break-after: avoid; break-inside: avoid }
        ul, ol { margin: 1em 0; padding-left: 40px }
        ul ul, ul ol, ol ul, ol ol { margin: 0 }
        ul { list-style-type: disc }
        ol { list-style-type: decimal }
        ul ul { list-style-type: circle }
        li { display: list-item }
        dd { margin-left: 40px }
        dl { margin: 1em 0 }
        figure { margin: 1em 40px }
        blockquote { margin: 1em 40px }
        pre { white-space: pre; margin: 1em 0 }
        hr { border: 1px solid gray; margin: .5em auto; color: gray }
        b, strong { font-weight: bold }
        i, em { font-style: italic }
        small { font-size: .8333em }
        sub { vertical-align: sub; font-size: .8333em }
        sup { vertical-align: super; font-size: .8333em }
        u { text-decoration: underline }
        s { text-decoration: line-through }
        a[href] { color: #0000ee; text-decoration: underline }
        table { display: table; border-spacing: 2px; border-collapse: separate; box-sizing: border-box; text-indent: 0 }
        caption { display: table-caption; text-align: center }
        colgroup { display: table-column-group }
        col { display: table-column }
        thead { display: table-header-group; vertical-align: middle }
        tbody { display: table-row-group; vertical-align: middle }
        tfoot { display: table-footer-group; vertical-align: middle }
        tr { display: table-row; vertical-align: inherit }
        td, th { display: table-cell; padding: 1px; vertical-align: inherit }
        th { font-weight: bold; text-align: center }
        """;
}
