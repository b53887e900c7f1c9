using Batch.Books.Import;

namespace Batch.Books.Tests.Import;

public sealed class SurfaceWordsTests
{
    [Theory]
    [InlineData("ASP", "paved")]
    [InlineData("ASPH-G", "paved")]
    [InlineData("Concrete / Asphalt", "paved")]
    [InlineData("TURF-F", "grass")]
    [InlineData("GRS", "grass")]
    [InlineData("GRVL-DIRT", "gravel")]
    [InlineData("Turf/Gravel", "")]
    [InlineData("ASPH-TURF", "")]
    [InlineData("WATER", "")]
    [InlineData("UNK", "")]
    [InlineData("", "")]
    public void A_surface_gets_our_word_or_none(string written, string ours) => Assert.Equal(ours, SurfaceWords.Of(written));
}
