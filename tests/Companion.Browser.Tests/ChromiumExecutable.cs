using System.Diagnostics;
using System.Runtime.InteropServices;
using Microsoft.Playwright;

namespace Companion.Browser.Tests;

/// <summary>
/// Where Chromium is: found on the machine, else installed (Debian's package as root, else Playwright's own installer), else an
/// error with the way out. Nothing is skipped.
/// </summary>
public static class ChromiumExecutable
{
    // The machines that run this have no sandbox for root and no network beyond loopback.
    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    /// <summary>How it is launched.</summary>
    /// <param name="playwright">Installs it where it has to.</param>
    /// <param name="more">More arguments than usual.</param>
    public static BrowserTypeLaunchOptions Options(IPlaywright playwright, params string[] more) => new()
    {
        ExecutablePath = Installed() ?? FromDebian() ?? FromPlaywright(playwright),
        Args = [.. Arguments, .. more],
    };

    private static string? Installed()
    {
        var named = Environment.GetEnvironmentVariable("CHROMIUM");
        string[] places =
        [
            "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome",
            "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
            @"C:\Program Files\Google\Chrome\Application\chrome.exe",
        ];
        return File.Exists(named) ? named : Array.Find(places, File.Exists);
    }

    private static string? FromDebian()
    {
        if (!RuntimeInformation.IsOSPlatform(OSPlatform.Linux) || Environment.UserName != "root" || !File.Exists("/usr/bin/apt-get"))
            return null;
        var code = Run("/bin/sh", "-c", "apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq chromium");
        return code == 0 ? Installed() : null;
    }

    private static string FromPlaywright(IPlaywright playwright)
    {
        if (Microsoft.Playwright.Program.Main(["install", "chromium"]) == 0 && File.Exists(playwright.Chromium.ExecutablePath))
            return playwright.Chromium.ExecutablePath;
        throw new InvalidOperationException(
            "The browser tests need Chromium and found none: install it (on Debian 'apt-get install chromium'), or name its "
            + "executable in the environment variable CHROMIUM, and run the tests again.");
    }

    private static int Run(string file, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(file, arguments) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode;
    }
}
