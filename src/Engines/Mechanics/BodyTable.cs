namespace Slantwise.Engines.Mechanics;

/// <summary>Whose mass fractions to use. All are from adults; none exists for both sexes of children.</summary>
public enum BodyTable
{
    /// <summary>The mean of the female and the male column: the default.</summary>
    Mean,

    /// <summary>The female column.</summary>
    Female,

    /// <summary>The male column.</summary>
    Male,
}
