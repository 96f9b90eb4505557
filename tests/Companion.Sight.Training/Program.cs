using System.Diagnostics;
using System.Globalization;
using Companion.Sight;
using Companion.Sight.Samples;
using Companion.Sight.Training;
using Companion.Sight.Training.Network;
using Companion.Sight.Training.Onnx;
using Companion.Sight.Training.Recording;

// dotnet run -c Release --project tests/Companion.Sight.Training    draws, trains, tests and writes src/Companion.Sight/Weights, in minutes
var options = TrainingOptions.Parse(args);
TorchLibrary.Loosen();
var watch = Stopwatch.StartNew();
var families = new Dictionary<string, IReadOnlyList<FontFamily>>();
foreach (var list in new[] { "training", "tuning", "held-out" })
{
    var folder = Path.Combine(TrainingOptions.Root, ".artifacts", "fonts", list);
    NpmPackages.Install(Path.Combine(TrainingOptions.Root, "tests", "Companion.Sight.Training", "Fonts", list), folder);
    families[list] = FontFamily.In(folder);
}

Say($"{families["training"].Count} families to train with");
const double Warped = 0.3;
const int Screens = 60;
var samples = SampleSet.Draw(
    options.Seed,
    options.Samples,
    families["training"],
    options.Threads,
    SampleRange.Small with { Warped = Warped },
    SampleRange.Big with { Warped = Warped });
var tuning = SampleSet.Draw(options.Seed + 1, 10_000, families["tuning"], options.Threads, SampleRange.Small, SampleRange.Big);
Say($"{samples.Count} samples drawn");
using var network = Trainer.Train(samples, options.Seed, options.Rounds, options.Threads, (round, loss) => Say($"round {round + 1}: loss {loss:0.0000}"));
var calibration = new Calibration(network, tuning);
var temperature = calibration.Temperature();
Say($"{100 * calibration.Right:0.00} % of the tuning samples right, temperature {temperature:0.000}");

var model = DigitModel.Write(network, temperature);
var reader = new GlyphReader(model);
if (Math.Abs(Figures.Of(reader, tuning).Right - calibration.Right) > 0.001)
    throw new InvalidOperationException("The model that was written does not read what the trained network reads.");
var written = new Record().Add(model, network.parameters().Sum(part => part.numel()), options, temperature);
(string, SampleRange)[] sizes = [("Big digits", SampleRange.Big), ("Small marks", SampleRange.Small)];
foreach (var (title, range) in sizes)
{
    var figures = Figures.Of(reader, SampleSet.Draw(options.Seed + 2, options.Tests, families["held-out"], options.Threads, range));
    written.Add(title, range, figures);
    Say($"{title}: {figures.Wrong} of {figures.Count} wrong, {figures.HeldBack} held back, {figures.WrongEntered} wrong and not held back");
}

written.Add(
    from list in families.Keys.Where(list => list != "training")
    from size in sizes
    select ($"{size.Item1}, {list} families", LessonFigures.Of(reader, options.Seed + 3, Screens, families[list], size.Item2)));
written.Add("Trained on", families["training"]);
written.Add("Tuned on (temperature, lessons)", families["tuning"]);
written.Add("Never trained on", families["held-out"]);
var folderOfWeights = Path.Combine(TrainingOptions.Root, "src", "Companion.Sight", "Weights");
File.WriteAllBytes(Path.Combine(folderOfWeights, "digits.onnx"), model);
File.WriteAllText(Path.Combine(folderOfWeights, "README.md"), written.ToString());
Say($"written to {folderOfWeights}");

void Say(FormattableString line) => Line(Console.Out, $"{watch.Elapsed.TotalSeconds,5:0} s  {line.ToString(CultureInfo.InvariantCulture)}");

static void Line(TextWriter output, string line) => output.WriteLine(line);
