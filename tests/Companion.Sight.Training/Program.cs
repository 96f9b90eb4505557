using Companion.Sight.Training;
using Companion.Sight.Training.Network;

// dotnet run -c Release --project tests/Companion.Sight.Training            the network that reads glyphs
// dotnet run -c Release --project tests/Companion.Sight.Training -- signs   the network that reads signs among what stands around them
// dotnet run -c Release --project tests/Companion.Sight.Training -- cells   the network that reads whole cells
// Each draws, trains, tests and writes its network with a record to src/Companion.Sight/Weights, in minutes. The second needs the first.
TorchLibrary.Loosen();
if (args is ["signs", ..])
    new SignTraining(BoardOptions.Signs.With(args[1..])).Run();
else if (args is ["cells", ..])
    new CellTraining(BoardOptions.Cells.With(args[1..])).Run();
else
    new DigitTraining(TrainingOptions.Parse(args)).Run();
