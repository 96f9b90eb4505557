using Companion.Sight.Reading;
using Companion.Sight.Training.Network;
using Companion.Sight.Training.Onnx;
using Companion.Sight.Training.Recording;

namespace Companion.Sight.Training;

/// <summary>Trains the network that reads whole cells, tests it and writes it.</summary>
/// <param name="options">How.</param>
internal sealed class CellTraining(BoardOptions options)
{
    /// <summary>Does it.</summary>
    public void Run()
    {
        var shop = new Workshop();
        var samples = CellSamples.Paint(options.Seed, options.Boards, shop.Training, options.Threads);
        shop.Say($"{samples.Count} cells of {options.Boards} boards");
        var heldOut = CellSamples.Paint(options.Seed + 2, options.Tests, shop.HeldOut, options.Threads);
        using var network = Trainer.Train(samples, options.Seed, options.Rounds, options.Threads, (round, loss) => shop.Say($"round {round + 1}: loss {loss:0.0000}"));
        var model = ReadingModel.Cells(network);
        using var reader = new CellReader(model);
        var tally = heldOut.Tally(reader);
        shop.Say($"{tally.Right} of {tally.Cells} cells right; of {tally.Digits} digits {tally.Missed} missed, {tally.Mistaken} mistaken, {tally.Invented} invented; lines: {Told.Of(tally.Lines)}");
        var record = new CellRecord().Add(model, network.parameters().Sum(part => part.numel()), options, samples)
            .Add(tally)
            .Add("Trained on", shop.Training)
            .Add("Never trained on", shop.HeldOut);
        shop.Write("cells.onnx", model, "cells.md", record.ToString());
    }
}
