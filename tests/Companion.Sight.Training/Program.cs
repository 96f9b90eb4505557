using Companion.Sight.Training;
using Companion.Sight.Training.Network;

// dotnet run -c Release --project tests/Companion.Sight.Training            the network that reads glyphs
// dotnet run -c Release --project tests/Companion.Sight.Training -- signs   the network that reads signs among what stands around them
// Each draws, trains, tests and writes its network with a record to src/Companion.Sight/Weights, in minutes. The second needs the first.
TorchLibrary.Loosen();
if (args is ["signs", ..])
    new SignTraining(SignOptions.Parse(args[1..])).Run();
else
    new DigitTraining(TrainingOptions.Parse(args)).Run();
