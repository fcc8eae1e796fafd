namespace Slantwise.Engines.Drawing;

/// <summary>How strong the type is.</summary>
public enum TextWeight
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>Headings and marks.</summary>
    Bold,
}
