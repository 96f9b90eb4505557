using System.CommandLine;
using System.Text;
using Companion.Drawing.Paper;
using Companion.Server.AfterShow;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Session.AfterShow.Recaps;

namespace Companion.Server.CommandLine;

/// <summary><c>companion recap</c>: what a show was, to look back on or to hand out.</summary>
internal static class RecapCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var show = ShowOptions.Show();
        var html = new Option<string?>("--html") { Description = "Write one page of HTML that needs nothing else.", HelpName = "file" };
        var pdf = new Option<string?>("--pdf") { Description = "Write a PDF file to print, on A4.", HelpName = "file" };
        var md = new Option<string?>("--md") { Description = "Write Markdown, with its pictures beside it as FILE-1.png and so on; printed without them where no file is named at all.", HelpName = "file" };
        var isPrivate = new Option<bool>("--private") { Description = "With the mistakes and how they were mended: for yourself." };
        var options = new LadderOptions();
        var command = new Command(
            "recap", "Tells what a show was: credit, grade, featured steps with their reasons, what came true, what was overlooked, where the time went.")
        {
            show, html, pdf, md, isPrivate,
        };
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var (ladder, streams) = (options.Whole(asked), asked.InvocationConfiguration);
            var wording = ShippedFiles.Wording(ladder);
            var files = OutputFile.AllOf((asked.GetValue(html), html.Name), (asked.GetValue(pdf), pdf.Name), (asked.GetValue(md), md.Name));
            var opened = ShowOptions.Open(DataFolder.Open(options.Data(asked)), asked.GetRequiredValue(show), streams.Error);
            var (tally, all) = (new Tally(), RecapMaker.ScansOf(opened.Show));
            RecapWords words;
            using (LongWork.Begin(streams, "Looking at every moment again", () => $"{tally.Value} of {all}"))
            {
                var chapters = ShowChapters.Of(opened, ladder, wording).Chapters;
                words = new(RecapMaker.Of(opened.Show, chapters, options.Cut(asked, ladder), tally, cancel), wording, ShippedFiles.Rarity());
            }

            var (withSlips, document) = (asked.GetValue(isPrivate), new PaperDocument(words.Title, PaperSize.A4, RecapPaper.Of(words, asked.GetValue(isPrivate))));
            var (text, pictures) = RecapMarkdown.Of(words, withSlips, files[2]?.Stem);
            Func<byte[]>[] writers =
            [
                () => Encoding.UTF8.GetBytes(PaperHtml.Write(document)),
                () => PaperPdf.Write(document),
                () => Encoding.UTF8.GetBytes(text),
            ];
            var named = OutputFile.Named(files, writers);

            // The pictures first, so that no link leads nowhere.
            OutputFile.WriteAll([.. pictures.Select(picture => (files[2]!.Beside(picture.Name), picture.Content)), .. named], null, cancel);
            foreach (var (file, _) in named)
                file.Report(streams.Output);
            if (named.IsEmpty)
                streams.Output.Write(text);
            return Task.FromResult(ExitCode.Fine);
        });
        return command;
    }
}
