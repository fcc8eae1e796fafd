using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos.Faults;

/// <summary>The sheets were copied from a copy before anybody wrote on them: once or twice, 3 or 4, 7 times.</summary>
internal sealed class CopiedPrint : Fault
{
    public override string Name => "copied print";

    public override void OnPrint(Leaf print, Severity severity, Luck luck) =>
        Copier.Copy(print, (int)Range(severity, luck, (1, 3), (3, 5), (7, 8)), luck);
}
