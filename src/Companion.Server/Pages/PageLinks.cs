using Companion.Server.Access;
using Companion.Server.Settings;

namespace Companion.Server.Pages;

/// <summary>The links by which pages are opened.</summary>
/// <param name="settings">Say how other machines reach this one.</param>
/// <param name="keys">The keys.</param>
internal sealed class PageLinks(ServerSettings settings, Func<AccessRole, Key> keys)
{
    private static readonly int Width = Page.All.Max(page => page.Title.Length);

    /// <summary>
    /// One line a page, with its key in the fragment, which browsers send to nobody; the same for other machines where they are
    /// listened to; and a caution.
    /// </summary>
    /// <param name="address">Where the server is on this machine, such as <c>http://localhost:5170</c>.</param>
    /// <param name="portForOthers">The port for other machines; without a meaning where they are not listened to.</param>
    public string Lines(string address, int portForOthers)
    {
        List<string> lines = [.. At(address)];
        if (settings.IsOpenToOthers)
            lines.AddRange(["From other machines:", .. At(AddressForOthers(portForOthers))]);
        return string.Join('\n', [.. lines, "These links open the panel: keep this window off air."]);
    }

    private string AddressForOthers(int port) =>
        new UriBuilder(Uri.UriSchemeHttps, settings.HostForOthers, port).Uri.GetLeftPart(UriPartial.Authority);

    private IEnumerable<string> At(string address) => Page.All.Select(page =>
        $"  {page.Title.PadRight(Width)}  {address}{page.Path}#k={keys(page.Role).Reveal()}  ({page.Purpose})");
}
