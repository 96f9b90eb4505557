using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using Companion.Benchmarks;
using Companion.Benchmarks.Following;
using Companion.Benchmarks.KeyToPaint;
using Companion.Benchmarks.Load;
using Companion.Benchmarks.Sight;

// dotnet run -c Release --project tests/Companion.Benchmarks -- medians            one solution? in half a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- scans              the scan after an entry, whole and rule by rule, in a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- key-to-paint       a key in the panel to the painted overlay, minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- follow             the presenter's screen to the panel that follows it, in two minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- load               entries while viewers follow and a chat is busy, in ten minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- coverage           what each rung solves of the open lists, minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- made               what each rung solves of puzzles that our generator makes, in a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- explained          puzzles solved and explained a second, in a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- costs              what a deduction of each rule costs, in minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- before-the-show    vetting, run sheets, forecasts, making, in a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- glyphs             glyphs read from the screen, in half a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- rarity             how often each talking point is true, in a minute
// dotnet run -c Release --project tests/Companion.Benchmarks -- sight              boards read from pictures of many styles, in minutes
// dotnet run -c Release --project tests/Companion.Benchmarks -- --filter '*Scan*'  BenchmarkDotNet, in minutes
if (args is ["crowd", ..])
{
    await CrowdProcess.RunAsync(args[1..], Console.In, Console.Out); // what -- load starts
    return;
}

Console.WriteLine(Puzzles.Description);
if (args is ["medians"])
    Medians.Print(Console.Out);
else if (args is ["scans"])
    Scans.Print(Console.Out);
else if (args is ["explained"])
    ExplainedSolves.Print(Console.Out);
else if (args is ["coverage"])
    Coverage.Print(Console.Out);
else if (args is ["made"])
    MadePuzzles.Print(Console.Out);
else if (args is ["costs"])
    Costs.Print(Console.Out);
else if (args is ["before-the-show"])
    BeforeTheShow.Print(Console.Out);
else if (args is ["rarity"])
    Rarities.Print(Console.Out);
else if (args is ["glyphs"])
    GlyphReads.Print(Console.Out);
else if (args is ["key-to-paint"])
    await PanelAndFloor.PrintAsync(Console.Out);
else if (args is ["sight", ..])
    await SightTable.PrintAsync(Console.Out, args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 400);
else if (args is ["follow"])
    await ScreenToNext.PrintAsync(Console.Out);
else if (args is ["load", ..])
    await LoadTable.PrintAsync(Console.Out, args.Length > 1 ? args[1..] : ["0", "500", "1000", "2000", "4000", "2000/1", "2000/2", "2000/3"]);
else
    BenchmarkSwitcher.FromAssembly(typeof(Uniqueness).Assembly).Run(args, DefaultConfig.Instance.WithArtifactsPath(".artifacts/benchmarks"));
