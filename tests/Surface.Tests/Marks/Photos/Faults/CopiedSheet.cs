using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The filled sheets were copied before they were read: once, twice, 5 times.</summary>
internal sealed class CopiedSheet : Fault
{
    public override string Name => "copy of a copy";

    public override void OnLeaf(Leaf leaf, Severity severity, Luck luck) =>
        Copier.Copy(leaf, (int)Range(severity, luck, (1, 2), (2, 3), (5, 6)), luck);
}
