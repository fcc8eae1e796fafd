using Slantwise.Surface.Tests.Marks.Forms;

namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>Something that goes wrong between the printer and the reader.</summary>
internal abstract class Fault
{
    public abstract string Name { get; }

    /// <summary>To the print, before anybody writes on it.</summary>
    public virtual void OnPrint(Leaf print, Severity severity, Luck luck)
    {
    }

    /// <summary>To the filled sheet.</summary>
    public virtual void OnLeaf(Leaf leaf, Severity severity, Luck luck)
    {
    }

    /// <summary>To the way the picture is taken.</summary>
    public virtual void OnShot(Shot shot, double widthMm, double heightMm, Severity severity, Luck luck)
    {
    }

    /// <summary>A number from the range of its severity.</summary>
    protected static double Range(Severity severity, Luck luck, (double Low, double High) fair, (double Low, double High) hard, (double Low, double High) beyond)
    {
        var (low, high) = severity switch { Severity.Fair => fair, Severity.Hard => hard, _ => beyond };
        return luck.Between(low, high);
    }
}
