import fs from "node:fs";
import sharp from "sharp";
import { toHtml } from "hast-util-to-html";
import { figureLines, plainDrawing, svgOf, type Drawing } from "#lib/figure/index.ts";
const sum=(i:number)=>((Math.sin(i*127.1)*43758.5453)%1+1)%1;
async function go(name:string, n:number, picture:{width:number,height:number}, sheet:{room:{width:number,height:number},text:number}, more:Partial<Drawing>={}) {
  const noise = await sharp({create:{width:picture.width,height:picture.height,channels:3,background:"#777",noise:{type:"gaussian",mean:110,sigma:40}}}).blur(8).jpeg().toBuffer();
  const drawing:Drawing={...plainDrawing,balloons:Array.from({length:n},(_,i)=>({id:`b${i}`,item:`i${i}`,at:{x:0.2+0.6*sum(i+1),y:0.2+0.6*sum(i+77)},seat:null})),...more};
  const t=Date.now();
  const l=figureLines(drawing,{picture,...sheet},(i)=>Number(i.slice(1))+1,(m)=>m);
  console.log(name,Date.now()-t,"ms",l.width,l.height,l.text,l.crossings,l.overruns,l.undrawn);
  const svg=svgOf(l,{address:`data:image/jpeg;base64,${noise.toString("base64")}`,is:"original",...picture});
  fs.writeFileSync(`/tmp/look/${name}.svg`,toHtml(svg,{space:"svg"}));
  await sharp(Buffer.from(toHtml(svg,{space:"svg"})),{density:72*6}).png().toFile(`/tmp/look/${name}.png`);
}
fs.mkdirSync("/tmp/look",{recursive:true});
const wide={room:{width:142,height:104},text:4.2};
const dims=[{id:"d1",mark:"0.4965 in",from:{x:.3,y:.5},to:{x:.7,y:.5},stand:-.08},{id:"d2",mark:"12.7 mm (limit 13 mm)",from:{x:.3,y:.3},to:{x:.3,y:.7},stand:.1},{id:"d3",mark:"0.05 mm",from:{x:.8,y:.8},to:{x:.83,y:.8},stand:.03},{id:"d4",mark:"30 mm",from:{x:.5,y:.9},to:{x:.75,y:.7},stand:0}];
await go("a",1,{width:1280,height:720},wide);
await go("b",5,{width:1280,height:720},wide,{dimensions:dims});
await go("c",12,{width:1280,height:720},wide);
await go("d",25,{width:1280,height:720},wide);
await go("e",40,{width:1280,height:720},wide);
await go("f",5,{width:1280,height:720},{room:{width:69,height:60},text:4.2},{quarter:90,straighten:8,light:.6});
await go("g",12,{width:3000,height:4000},wide);
await go("h",6,{width:1280,height:720},wide,{balloons:[0,1,2,3,4,5].map(i=>({id:`b${i}`,item:i<2?"i7":`i${i}`,at:{x:.3+.05*i,y:.4+.03*i},seat:i===3?{x:.8,y:.2}:i===4?{x:1.2,y:.5}:null}))});
await go("i",12,{width:4000,height:400},wide);
