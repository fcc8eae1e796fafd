namespace Slantwise.Engines.Drawing;

/// <summary>Colours by meaning, so that screen, dark screen and paper each choose their own. Never the only carrier of a meaning.</summary>
public enum Tone
{
    /// <summary>Text and strong lines.</summary>
    Ink,

    /// <summary>Secondary text, axes.</summary>
    Muted,

    /// <summary>Hairlines, grids, boxes to fill.</summary>
    Faint,

    /// <summary>The page itself, for cutting shapes out.</summary>
    Ground,

    /// <summary>The main series, what the picture is about.</summary>
    Accent,

    /// <summary>A quiet fill of the main series: ranges, bands.</summary>
    AccentSoft,

    /// <summary>A middle fill of the main series, between the quiet and the strong one: a shirt, an area.</summary>
    AccentMiddle,

    /// <summary>A second series beside the main one.</summary>
    Second,

    /// <summary>A quiet fill of the second series.</summary>
    SecondSoft,

    /// <summary>A middle fill of the second series.</summary>
    SecondMiddle,

    /// <summary>Asks for attention: a caution, a disagreement.</summary>
    Caution,

    /// <summary>A page tinted like cream paper, for those whom white dazzles; on a screen only.</summary>
    Cream,
}
