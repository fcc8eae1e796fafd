using BenchmarkDotNet.Attributes;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Bench.Mechanics;

/// <summary>Whole answers from joint angles: settle, centre of mass, base, margin with every side, load shares with bounds.</summary>
/// <remarks>Targets: 100,000 whole answers a second on one core, 1 ms for a tolerance of 1,000 errors.</remarks>
[MemoryDiagnoser]
public class WholeAnswers
{
    private Posture _posture = null!;

    /// <summary>Postures with one to four contacts.</summary>
    [Params("stork", "two-feet", "tripod", "crab")]
    public string Key { get; set; } = "";

    [GlobalSetup]
    public void Find() => _posture = PostureLibrary.Find(Key)!;

    [Benchmark]
    public double WholeAnswer() => PostureBalance.Of(_posture.Settle()).Whole.Margin.MarginH;

    [Benchmark]
    public double ToleranceOf1000() => BalanceTolerance.Of(_posture.Pose, _posture.Contacts, 3, 1000).HeldFraction;
}
