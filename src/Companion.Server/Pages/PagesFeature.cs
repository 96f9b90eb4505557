using System.Collections.Immutable;
using Companion.Server.Access;

namespace Companion.Server.Pages;

/// <summary>The pages that people open.</summary>
internal static class PagesFeature
{
    /// <summary>Serves the pages' files: those with a hash in their names may be kept for ever, all others never.</summary>
    /// <param name="app">The server.</param>
    /// <param name="pages">The pages. With several of them there is one at <c>/</c> that names them; one alone is shown there.</param>
    public static void MapPages(this WebApplication app, params ImmutableArray<Page> pages)
    {
        var others = Page.All.Except(pages).Select(FileOf).Except(pages.Select(FileOf)).ToHashSet();
        app.UseWhen(context => !others.Contains(context.Request.Path), files => files.UseStaticFiles(new StaticFileOptions
        {
            OnPrepareResponse = file =>
            {
                if (file.Context.Request.Path.StartsWithSegments("/assets"))
                    file.Context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
            },
        }));
        if (pages is [var only])
            app.MapGet("/", context => Send(context, only));
        else
            app.MapGet("/", () => Results.Content(Index.Html, "text/html; charset=utf-8"));
        foreach (var page in pages)
            app.MapGet(page.Path, context => Send(context, page));
    }

    private static PathString FileOf(Page page) => "/" + page.File;

    private static async Task Send(HttpContext context, Page page)
    {
        var file = context.RequestServices.GetRequiredService<IWebHostEnvironment>().WebRootFileProvider.GetFileInfo(page.File);
        if (!file.Exists)
        {
            await PlainAnswer.Write(context, StatusCodes.Status404NotFound, "This page was not built into the program: build it again.");
            return;
        }

        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.SendFileAsync(file, context.RequestAborted);
    }
}
