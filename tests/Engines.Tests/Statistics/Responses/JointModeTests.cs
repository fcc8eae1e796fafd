using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>The control is what it claims to be: the joint mode that base R finds with the same spreads, table and command in data/.</summary>
public sealed class JointModeTests
{
    [Fact]
    public void Of_SimulatedClass_IsTheJointModeOfBaseR()
    {
        var table = Tables.Named("class_joint_map_s1.2_o0.7.csv");
        var joint = new JointMode(Tables.SimulatedClass(), Tables.ClassOptions().Priors, 1.2, 0.7);
        string[] names = ["kappa0", "kappa1_logsec", "phi_lesson", .. Enumerable.Range(1, 30).Select(i => $"theta_{i}"), .. Enumerable.Range(1, 12).Select(j => $"delta_{j}")];
        for (var k = 0; k < names.Length; k++)
        {
            Assert.Equal(table[names[k]][0], joint.Value(k).Mean, 1e-9);
            Assert.Equal(table[names[k]][1], joint.Value(k).Sd, 1e-9);
        }
        Assert.Equal(-289.589467163572, joint.LogEvidence, 1e-8);
        Assert.Equal(-0.146386333857, joint.Eta(0, 6, 5).Mean, 1e-9);
        Assert.Equal(0.659439280710, joint.Eta(0, 6, 5).Sd, 1e-9);
    }
}
