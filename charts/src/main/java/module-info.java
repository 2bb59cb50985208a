/** Every picture and page of a result. */
module afterweld.charts {
  requires transitive afterweld.simulator;
  requires transitive java.desktop;
  requires com.samskivert.jmustache;
  requires org.apache.xmlgraphics.batik.dom;
  requires org.apache.xmlgraphics.batik.svggen;
  requires xchart;

  exports afterweld.charts;
  exports afterweld.charts.plot;
  exports afterweld.charts.report;
}
