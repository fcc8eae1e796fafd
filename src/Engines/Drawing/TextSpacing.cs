namespace Slantwise.Engines.Drawing;

/// <summary>White space added within a line of text, in fractions of the type size.</summary>
/// <param name="LetterFraction">Between any two characters.</param>
/// <param name="WordFraction">At every space, besides.</param>
public readonly record struct TextSpacing(double LetterFraction, double WordFraction);
