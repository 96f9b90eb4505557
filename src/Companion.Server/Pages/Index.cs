namespace Companion.Server.Pages;

/// <summary>The page at <c>/</c>. It names the other pages without their keys, so that it may be seen by anybody.</summary>
internal static class Index
{
    /// <summary>The page.</summary>
    public static string Html { get; } = $"""
        <!doctype html>
        <html lang="en">
        <head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Companion</title></head>
        <body>
        <h1>Companion</h1>
        <p>Each page opens by its own link, with its key: the companion printed the links when it started.</p>
        <dl>
        {string.Join('\n', Page.All.Select(page => $"<dt>{page.Title}: {page.Path}</dt><dd>{page.Purpose}</dd>"))}
        </dl>
        </body>
        </html>
        """;
}
