using Companion.Sight.Samples;
using Companion.Sight.Training.Network;
using Companion.Sight.Training.Onnx;
using Companion.Sight.Training.Recording;

namespace Companion.Sight.Training;

/// <summary>Trains the network that reads glyphs, tests it and writes it.</summary>
/// <param name="options">How.</param>
internal sealed class DigitTraining(TrainingOptions options)
{
    private const double Warped = 0.3;
    private const int Screens = 60;

    /// <summary>Does it.</summary>
    public void Run()
    {
        var shop = new Workshop();
        var samples = SampleSet.Draw(
            options.Seed,
            options.Samples,
            shop.Training,
            options.Threads,
            SampleRange.Small with { Warped = Warped },
            SampleRange.Big with { Warped = Warped });
        var tuning = SampleSet.Draw(options.Seed + 1, 10_000, shop.Tuning, options.Threads, SampleRange.Small, SampleRange.Big);
        shop.Say($"{samples.Count} samples drawn");
        using var network = Trainer.Train(samples, options.Seed, options.Rounds, options.Threads, (round, loss) => shop.Say($"round {round + 1}: loss {loss:0.0000}"));
        var calibration = new Calibration(Calibration.Sums(network, tuning), tuning.Kinds);
        var temperature = calibration.Temperature();
        shop.Say($"{100 * calibration.Right:0.00} % of the tuning samples right, temperature {temperature:0.000}");

        var model = ReadingModel.Digits(network, temperature);
        var reader = new GlyphReader(model);
        if (Math.Abs(Figures.Of(reader, tuning).Right - calibration.Right) > 0.001)
            throw new InvalidOperationException("The model that was written does not read what the trained network reads.");
        var written = new Record().Add(model, network.parameters().Sum(part => part.numel()), options, temperature);
        (string, SampleRange)[] sizes = [("Big digits", SampleRange.Big), ("Small marks", SampleRange.Small)];
        foreach (var (title, range) in sizes)
        {
            var figures = Figures.Of(reader, SampleSet.Draw(options.Seed + 2, options.Tests, shop.HeldOut, options.Threads, range));
            written.Add(title, range, figures);
            shop.Say($"{title}: {figures.Wrong} of {figures.Count} wrong, {figures.HeldBack} held back, {figures.WrongEntered} wrong and not held back");
        }

        written.Add(
            from list in new[] { ("tuning", shop.Tuning), ("held-out", shop.HeldOut) }
            from size in sizes
            select ($"{size.Item1}, {list.Item1} families", LessonFigures.Of(reader, options.Seed + 3, Screens, list.Item2, size.Item2)));
        written.Add("Trained on", shop.Training);
        written.Add("Tuned on (temperature, lessons)", shop.Tuning);
        written.Add("Never trained on", shop.HeldOut);
        shop.Write("digits.onnx", model, "README.md", written.ToString());
    }
}
