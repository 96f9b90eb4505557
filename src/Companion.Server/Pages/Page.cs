using System.Collections.Immutable;
using Companion.Server.Access;
using Microsoft.Extensions.FileProviders;

namespace Companion.Server.Pages;

/// <summary>A page that somebody opens.</summary>
/// <param name="Path">Its address.</param>
/// <param name="File">Its file among the built pages.</param>
/// <param name="Role">Whose key opens it.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Purpose">What it is for.</param>
internal sealed record Page(string Path, string File, AccessRole Role, string Title, string Purpose)
{
    /// <summary>The page for viewers.</summary>
    public static Page Audience { get; } =
        new("/audience", "audience.html", AccessRole.Viewer, "Audience", "for viewers: the board as they see it, and hints");

    /// <summary>All pages.</summary>
    public static ImmutableArray<Page> All { get; } =
    [
        new("/presenter", "presenter.html", AccessRole.Presenter, "Presenter", "the private panel"),
        new("/desk", "presenter.html", AccessRole.CoHost, "Co-host", "the panel for a co-host"),
        new("/overlay", "overlay.html", AccessRole.Overlay, "Overlay", "page source for the broadcast software; ?scene=NAME for another scene"),
        new("/stage", "stage.html", AccessRole.Overlay, "Stage", "the whole board on air"),
        Audience,
    ];

    /// <summary>Whether the pages are among the program's files.</summary>
    /// <param name="files">The files.</param>
    public static bool AreBuilt(IFileProvider files) => All.All(page => files.GetFileInfo(page.File).Exists);
}
