namespace Slantwise.Engines.Drawing;

/// <summary>One element of a scene. The kinds are these and no others.</summary>
/// <param name="Tone">Its colour by meaning.</param>
public abstract record Shape(Tone Tone);
