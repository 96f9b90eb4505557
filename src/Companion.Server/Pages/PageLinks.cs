using Companion.Server.Access;

namespace Companion.Server.Pages;

/// <summary>The links by which pages are opened.</summary>
internal static class PageLinks
{
    /// <summary>One line a page, with its key in the fragment, which browsers send to nobody; and a caution.</summary>
    /// <param name="address">Where the server is, such as <c>http://localhost:5170</c>.</param>
    /// <param name="keys">The keys.</param>
    public static string Lines(string address, Func<AccessRole, Key> keys)
    {
        var width = Page.All.Max(page => page.Title.Length);
        var lines = Page.All.Select(page =>
            $"  {page.Title.PadRight(width)}  {address}{page.Path}#k={keys(page.Role).Reveal()}  ({page.Purpose})");
        return string.Join('\n', [.. lines, "These links open the panel: keep this window off air."]);
    }
}
